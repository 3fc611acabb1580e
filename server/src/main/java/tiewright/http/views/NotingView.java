package tiewright.http.views;

import java.util.List;
import tiewright.http.pieces.Button;
import tiewright.http.pieces.FormField;
import tiewright.http.pieces.NavLink;
import tiewright.http.pieces.ReasonTable;
import tiewright.http.pieces.Refusal;
import tiewright.http.pieces.TextField;

/**
 * A game that is noted while its film runs. For the own club's eyes only.
 *
 * @param fill rubbers whose players and card can be filled in
 * @param game who plays, before the first rally
 * @param isGameOpen whether these fields are in sight
 * @param kept under which name what was typed survives a reload
 */
public record NotingView(
        Refusal refusal,
        List<String> cautions,
        String path,
        String kept,
        List<NavLink> fill,
        List<FormField> game,
        boolean isGameOpen,
        TextField rallies,
        List<Key> endings,
        List<Key> players,
        List<Group> keys,
        Stands stands,
        List<Button> buttons) {
    public NotingView {
        cautions = List.copyOf(cautions);
        fill = List.copyOf(fill);
        game = List.copyOf(game);
        endings = List.copyOf(endings);
        keys = List.copyOf(keys);
        players = List.copyOf(players);
        buttons = List.copyOf(buttons);
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
     */
    public record Stands(List<String> faults, List<String> lines, List<ReasonTable> counts) {
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
