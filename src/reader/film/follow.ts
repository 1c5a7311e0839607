/**
 * Tells where a clip stands, whenever that changes: at every picture of the screen while it plays, at once when it is sent
 * elsewhere. It goes by the clock of the player and not by the frames it shows: a clip of drawings may have few of them a second.
 */
export function follow(video: HTMLVideoElement, tell: (clip_s: number) => void): void {
  let running = false;
  const now = (): void => {
    tell(video.currentTime);
  };
  const run = (): void => {
    now();
    if (video.paused || video.ended) running = false;
    else requestAnimationFrame(run);
  };
  const start = (): void => {
    if (running) return;
    running = true;
    requestAnimationFrame(run);
  };
  for (const event of ['play', 'playing']) video.addEventListener(event, start);
  // timeupdate goes on in a page that is not in front, where no picture of the screen is drawn
  for (const event of ['loadedmetadata', 'seeking', 'seeked', 'timeupdate', 'pause', 'ended'])
    video.addEventListener(event, now);
}
