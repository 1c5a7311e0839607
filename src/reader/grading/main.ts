/** Coded clips graded by key: started by the grading page. */
export {};
