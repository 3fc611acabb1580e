package tiewright.http.views;

import java.util.List;
import java.util.Optional;
import tiewright.http.pieces.Button;
import tiewright.http.pieces.NavLink;
import tiewright.http.pieces.ReasonTable;
import tiewright.http.pieces.Refusal;
import tiewright.http.pieces.SelectField;
import tiewright.picture.EstimatePicture;

/**
 * What a club knows of its own squad, and what its captain thinks of it. For that club's eyes only.
 *
 * @param form empty while nothing is known: then rating comes first
 * @param pairs empty while no pair of the squad was seen or judged
 * @param ways where more of it can be given or read
 * @param cautions how to read all of it
 */
public record SquadView(
        Refusal refusal,
        Optional<Form> form,
        Optional<Pairs> pairs,
        Rating rating,
        Notes notes,
        List<Way> ways,
        List<String> cautions) {
    public SquadView {
        ways = List.copyOf(ways);
        cautions = List.copyOf(cautions);
    }

    /** Form of everybody on one axis, and the same in words. */
    public record Form(EstimatePicture picture, List<InWords> words) {
        public Form {
            words = List.copyOf(words);
        }
    }

    /** What a picture shows of one player or pair, for who cannot see it. */
    public record InWords(String who, List<String> sentences) {}

    /**
     * What two win together beyond what each brings.
     *
     * @param said what is proven, in a sentence
     * @param nearest the pair that comes nearest to it, in figures; empty where something is proven
     * @param picture the three that come nearest
     */
    public record Pairs(
            String said, String nearest, EstimatePicture picture, String all, List<Step> steps, ReasonTable table) {
        public Pairs {
            steps = List.copyOf(steps);
        }
    }

    /** A line of the stairs of pairs: its player with everybody above. */
    public record Step(String name, List<Cell> cells) {
        public Step {
            cells = List.copyOf(cells);
        }
    }

    /**
     * Two players.
     *
     * @param figure empty where they were never seen together
     * @param words who they are and how much was seen, for those who hear it
     */
    public record Cell(String figure, boolean isFirm, String words) {}

    /** The captain's own view of everybody, kept by one press. */
    public record Rating(String path, String said, List<Player> players, Button keep) {
        public Rating {
            players = List.copyOf(players);
        }
    }

    /**
     * @param had what stood there as the form was made: whoever is left as he was is not noted again
     * @param judged the view in words; empty for none
     */
    public record Player(String code, String name, SelectField form, SelectField doubt, String had, String judged) {}

    /** What is noted about pairs and old games, and how it is deleted; each with what stands there now. */
    public record Notes(
            String pairsNow,
            List<Noted> pairs,
            ActionForm pair,
            String oldNow,
            ActionForm halfLife,
            ActionForm forget) {
        public Notes {
            pairs = List.copyOf(pairs);
        }
    }

    public record Noted(String words, ActionForm remove) {}

    /** @param detail what is there */
    public record Way(NavLink link, String detail) {}
}
