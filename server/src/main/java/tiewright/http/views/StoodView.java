package tiewright.http.views;

/**
 * At which minute a page shows the day.
 *
 * @param action the page itself
 * @param time what was typed ("14:31"), empty for now
 * @param line says that this is the past, empty for now
 * @param problem why the time was not taken, empty if it was
 */
public record StoodView(String action, String time, String line, String problem) {}
