/**
 * Finished pages in a real browser: Debian's headless Chromium, driven over the DevTools protocol by the JDK's own WebSocket client.
 * Without Chromium the tests are skipped and say so; where WEATHERLAP_REQUIRE_BROWSER is true that is a failure.
 */
package weatherlap.reports.browser;
