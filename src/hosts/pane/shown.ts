/** What a part of the pane hears when it comes into sight. */
export const SHOWN = "shown";
