package tiewright.http.views;

/** A calendar to subscribe to: its address on this service, and the whole address to type or copy. */
public record CalendarLink(String href, String address) {}
