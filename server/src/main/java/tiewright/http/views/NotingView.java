package tiewright.http.views;

import java.util.List;
import java.util.Optional;
import tiewright.http.pieces.Button;
import tiewright.http.pieces.FormField;
import tiewright.http.pieces.NavLink;
import tiewright.http.pieces.ReasonTable;
import tiewright.http.pieces.Refusal;
import tiewright.http.pieces.TextField;
import tiewright.picture.RallyLine;

/**
 * A game that is noted while its film runs. For the own club's eyes only.
 *
 * @param fill rubbers whose players and card can be filled in
 */
public record NotingView(
        Refusal refusal,
        Head head,
        List<String> cautions,
        List<NavLink> fill,
        Game game,
        Sent sent,
        Pad pad,
        Stands stands) {
    public NotingView {
        cautions = List.copyOf(cautions);
        fill = List.copyOf(fill);
    }

    /**
     * @param title which game
     * @param noted how many rallies there are so far
     * @param who the two pairs; empty while they are not named
     */
    public record Head(String title, String noted, String who) {}

    /**
     * Who plays, before the first rally.
     *
     * @param isOpen whether these fields are in sight
     */
    public record Game(List<FormField> fields, boolean isOpen) {
        public Game {
            fields = List.copyOf(fields);
        }
    }

    /**
     * The form and where it goes.
     *
     * @param kept under which name what was typed survives a reload
     */
    public record Sent(String path, String kept, TextField rallies, List<Button> buttons) {
        public Sent {
            buttons = List.copyOf(buttons);
        }
    }

    /** Keys for a thumb, and all of them in groups to read. */
    public record Pad(List<Key> endings, List<Key> players, List<Group> groups) {
        public Pad {
            endings = List.copyOf(endings);
            players = List.copyOf(players);
            groups = List.copyOf(groups);
        }
    }

    /** @param isFirst enough for a first look at a game: always in sight */
    public record Group(String title, boolean isFirst, List<Key> keys) {
        public Group {
            keys = List.copyOf(keys);
        }
    }

    /** @param words what it notes */
    public record Key(String key, String words) {}

    /**
     * How it stands after the rallies that can be read.
     *
     * @param faults what cannot be read, or does not fit
     * @param lines at least one
     * @param score own points first; empty before the game is named
     * @param line the game rally by rally; empty before the first
     */
    public record Stands(
            List<String> faults, List<String> lines, String score, Optional<RallyLine> line, List<ReasonTable> counts) {
        public Stands {
            faults = List.copyOf(faults);
            lines = List.copyOf(lines);
            counts = List.copyOf(counts);
        }

        /** What one looks at between two rallies. */
        public String first() {
            return faults.isEmpty() ? lines.get(0) : faults.get(0);
        }
    }
}
