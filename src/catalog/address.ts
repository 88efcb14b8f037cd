/** Where `npm run excel` serves the add-in, and what a build is made for when nothing else is said. */
export const DEVELOPMENT_ADDRESS = "https://localhost:3000";
