/** A clip and its traces in step: started by the page that holds clips. */
export {};
