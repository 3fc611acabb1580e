package tiewright.lineup.club;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import tiewright.event.ClubId;
import tiewright.event.Event;
import tiewright.event.Player;
import tiewright.event.PlayerId;
import tiewright.event.PrivateNote;
import tiewright.event.Tie;
import tiewright.event.TieId;
import tiewright.lineup.TiesAhead;

/**
 * What the players of a club have had of the day, what their captain promised them, and whether it can still be kept.
 *
 * @param lines one for each player, in the order of the squad
 * @param beyond rubbers promised beyond all places in the ties ahead, although each player alone could have them
 * @param mayGoOn another tie may come if the club goes through; it counts nowhere here
 */
public record PlayingDay(List<Line> lines, int beyond, boolean mayGoOn) {
    public PlayingDay {
        lines = List.copyOf(lines);
    }

    /**
     * One player.
     *
     * @param promised rubbers by the end of the day; 0 = nothing
     * @param played rubbers played, or on court
     * @param named on an opened sheet and still to be played
     * @param left rubbers that the ties ahead can give at most
     * @param resting ties ahead in which the captain wants the player to rest
     * @param granted rubbers left without these
     */
    public record Line(
            PlayerId player, int promised, int played, int named, int left, List<TieId> resting, int granted) {
        public Line {
            resting = List.copyOf(resting);
        }

        public int had() {
            return played + named;
        }

        public int missing() {
            return Math.max(0, promised - had());
        }

        public Standing standing() {
            if (missing() == 0) {
                return promised == 0 ? Standing.NOTHING_PROMISED : Standing.KEPT;
            }
            return missing() > left ? Standing.GONE : missing() > granted ? Standing.RESTS : Standing.OPEN;
        }
    }

    /** How a promise stands. */
    public enum Standing {
        NOTHING_PROMISED("nothing"),
        /** Played, or named on an opened sheet. */
        KEPT("kept"),
        OPEN("open"),
        /** Only if a wish is taken back that the player rests. */
        RESTS("rests"),
        /** Fewer rubbers are left than missing. */
        GONE("gone");

        private final String code;

        Standing(String code) {
            this.code = code;
        }

        public String code() {
            return code;
        }
    }

    /** @param own what the club's captain promised and wishes; a later note about the same replaces an earlier one */
    public static PlayingDay of(Event event, ClubId club, List<PrivateNote> own) {
        ClubDay day = new ClubDay(event, club, own);
        Map<PlayerId, Integer> promised = OwnNotes.promised(event, club, own);
        ClubDay.Had had = day.had(Optional.empty());
        List<Line> lines = new ArrayList<>();
        for (Player player : event.squad(club)) {
            PlayerId id = player.id();
            List<Tie> ahead = day.ahead();
            lines.add(new Line(
                    id,
                    promised.getOrDefault(id, 0),
                    had.played().getOrDefault(id, 0),
                    had.named().getOrDefault(id, 0),
                    ahead.stream().mapToInt(tie -> day.places(tie).most(id)).sum(),
                    ahead.stream()
                            .filter(tie -> day.mustRest(tie).contains(id))
                            .map(Tie::id)
                            .toList(),
                    ahead.stream().mapToInt(tie -> day.granted(tie).most(id)).sum()));
        }
        return new PlayingDay(lines, beyond(day, lines), day.mayGoOn());
    }

    private static int beyond(ClubDay day, List<Line> lines) {
        List<PlayerId> players = lines.stream().map(Line::player).toList();
        int[] wanted = lines.stream()
                .mapToInt(line -> Math.min(line.missing(), line.left()))
                .toArray();
        return new TiesAhead(day.ahead().stream().map(day::places).toList(), players).lost(wanted);
    }

    public boolean isAnythingPromised() {
        return lines.stream().anyMatch(line -> line.promised() > 0);
    }

    /** Rubbers promised to single players by the end of the day. */
    public Map<PlayerId, Integer> promised() {
        return lines.stream()
                .filter(line -> line.promised() > 0)
                .collect(Collectors.toMap(Line::player, Line::promised));
    }

    /** Of one player; empty for whoever is not in the squad. */
    public Optional<Line> line(PlayerId player) {
        return lines.stream().filter(line -> line.player().equals(player)).findFirst();
    }
}
