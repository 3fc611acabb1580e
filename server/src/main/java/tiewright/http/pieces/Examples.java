package tiewright.http.pieces;

import java.util.List;

/**
 * One of each piece, filled with an invented event: what {@code examples.jte} shows. Tests and docs share it, so a piece
 * that looks wrong looks wrong here first.
 */
public record Examples(
        Frame frame,
        Refusal refusal,
        TextField name,
        TextField points,
        SelectField partner,
        ChoiceList choice,
        Countdown countdown,
        List<TieLine> ties,
        List<SheetView> sheets,
        List<CardView> cards,
        ReasonTable table,
        Bracket bracket,
        List<Notice> notices,
        List<NextCard> next,
        DoNext doNext,
        Receipt receipt,
        Progress progress,
        List<DoubtBar> doubts,
        WishList wishes,
        EmptyPlace empty,
        CopyText copy,
        List<State> states) {

    public Examples {
        ties = List.copyOf(ties);
        sheets = List.copyOf(sheets);
        cards = List.copyOf(cards);
        notices = List.copyOf(notices);
        next = List.copyOf(next);
        doubts = List.copyOf(doubts);
        states = List.copyOf(states);
    }

    /** The examples as shown; always the same. */
    public static Examples shown() {
        return ExampleDay.shown();
    }
}
