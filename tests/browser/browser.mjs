// Chromium, quiet and headless.
import { chromium } from "playwright-core";

const quiet = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

/** Starts the system's browser, or the one named by INCHWISE_CHROMIUM. */
export const launch = () =>
  chromium.launch({
    executablePath: process.env.INCHWISE_CHROMIUM ?? "/usr/bin/chromium",
    headless: true,
    args: quiet,
  });

/** The screens every look is judged at. */
export const screens = {
  phone: { width: 390, height: 844 },
  tablet: { width: 820, height: 1180 },
  desktop: { width: 1440, height: 900 },
};

/** The colour schemes. */
export const schemes = ["light", "dark"];
