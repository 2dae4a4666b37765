/** The picture a link to a hole is shown with: its size in pixels and its file beside the hole's page. */
export const SHARE_WIDTH = 1200;
export const SHARE_HEIGHT = 630;
export const SHARE_FILE = "share.jpg";
