package tiewright.http.views;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import tiewright.http.pieces.ChoiceList;
import tiewright.http.pieces.Receipt;
import tiewright.http.pieces.Refusal;
import tiewright.http.pieces.SelectField;
import tiewright.http.pieces.SheetView;
import tiewright.http.pieces.State;

/**
 * Naming pairs: the sheet of a tie, or the pair for its decider.
 *
 * @param own the sheet that is sealed now, under its cover; empty if none is in
 * @param closed why nothing can be sealed here now, empty while it can
 * @param asks what to ask before somebody marked as hurt is named
 * @param actions what else can be done: ask for the opening, tell the club
 */
public record SheetFormView(
        Refusal refusal,
        Head head,
        Optional<SheetView> own,
        Optional<Receipt> receipt,
        String closed,
        Asks asks,
        Naming naming,
        List<ActionForm> actions) {

    /**
     * What has to be asked before somebody marked as hurt is named.
     *
     * @param lines one for each marked player
     * @param tick says that it was asked; empty where nobody is marked
     */
    public record Asks(List<String> lines, Optional<ChoiceList> tick) {
        public static final Asks NOTHING = new Asks(List.of(), Optional.empty());
    }

    /**
     * What the page is about and how long is left.
     *
     * @param ours that the own one lies at the desk; nothing before, and nothing for one that lies on a phone
     * @param by until when, in words
     * @param theirs whether the other club's is in, and what either captain asked
     * @param rules what happens at the deadline, and to a late sheet
     */
    public record Head(
            String title, State ours, String by, Optional<Instant> deadline, String theirs, List<String> rules) {}

    /**
     * The form: fields for each rubber, and for a browser with scripts the same as places and names to tap.
     *
     * @param worth what the sheet in the form is worth; empty while it is not whole
     */
    public record Naming(
            String action,
            List<Rubber> rubbers,
            List<Name> squad,
            Starts starts,
            String seal,
            Keeping keeping,
            Closing closing,
            Optional<String> worth) {

        /** Those who are on no rubber. */
        public List<String> unnamed() {
            return squad.stream().filter(name -> !name.named()).map(Name::name).toList();
        }
    }

    /**
     * @param kind who may stand in it, in a word; empty where all rubbers are open
     * @param error what is wrong with this rubber, in sentences
     */
    public record Rubber(
            String id, String number, String kind, String label, String error, SelectField first, SelectField second) {
        public List<SelectField> seats() {
            return List.of(first, second);
        }
    }

    /**
     * A player to tap.
     *
     * @param detail what counts before naming: played, rested, to be asked first
     * @param named stands in the form
     */
    public record Name(String code, String name, String detail, boolean named) {}

    /**
     * What a sheet can start from.
     *
     * @param sealed how often one was sealed: a draft from before the last sealing is not shown again
     * @param given the form holds what somebody just chose, not what was there before
     * @param last the club's sheet that was opened last, as codes in the order of the fields; empty if there is none
     * @param shuffled chance may put the pairs into other rubbers
     * @param draws how often chance was asked for an order since the page was opened
     * @param proposal where to ask for one; empty where none is made
     * @param most rubbers that a player may be named for
     */
    public record Starts(
            int sealed, boolean given, String last, boolean shuffled, int draws, String proposal, int most) {}

    /**
     * What a browser needs to close the sheet before it leaves the phone.
     *
     * @param to the service's public key, in base64url
     * @param bound to whom this page was shown
     * @param inTheAir somebody who listens can read what is not closed
     */
    public record Closing(String to, String bound, boolean inTheAir) {}

    /**
     * What a browser needs to keep the sheet itself: the codes that its receipt is made over.
     *
     * @param onPhone a sheet is in, and it lies on a phone
     * @param hurt the codes of those who have to be asked first, parted by blanks
     */
    public record Keeping(String exchange, String tie, String club, boolean onPhone, String hurt, String words) {}
}
