package tiewright.timetable;

/**
 * How fast play goes in this hall; the organiser can change both.
 *
 * @param secondsPerRally from one serve to the next, all pauses in a game included. 22: a rally of about 10.6 s and a rest of
 *     about 11.4 s in mixed badminton doubles (activity profile, Sports 2025, 13(11), 397; from a summary)
 * @param turnoverMinutes from the last rally to the first one of the next rubber on that court. 5: common practice, no source
 */
public record Pace(double secondsPerRally, int turnoverMinutes) {
    public static final Pace USUAL = new Pace(22, 5);

    public Pace {
        if (!(secondsPerRally >= 1 && secondsPerRally <= 300) || turnoverMinutes < 0 || turnoverMinutes > 120) {
            throw new IllegalArgumentException("no pace: " + secondsPerRally + " s, " + turnoverMinutes + " min");
        }
    }
}
