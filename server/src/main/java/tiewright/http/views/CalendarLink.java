package tiewright.http.views;

/**
 * A calendar to subscribe to: its address on this service, and the whole address to type or copy.
 *
 * @param alarms a file to take into a calendar once, which rings; empty for none
 */
public record CalendarLink(String href, String address, String alarms) {}
