package tiewright.http.pieces;

import static tiewright.http.pieces.State.NONE;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tiewright.http.pieces.ReasonTable.Cell;
import tiewright.http.pieces.ReasonTable.Column;
import tiewright.wording.Words;

/** The invented event behind {@link Examples}. */
final class ExampleDay {

    private static final State SEALED = new State(Mark.SEALED, "Sealed");
    private static final State OPENED = new State(Mark.OPENED, "Opened");
    private static final State PLAYING = new State(Mark.PLAYING, "On court");
    private static final State HELD = new State(Mark.HELD, "Held");
    private static final State FINAL = new State(Mark.FINAL, "Final");

    private ExampleDay() {}

    static Examples shown() {
        return new Examples(
                frame(),
                new Refusal(
                        "This sheet was not sealed. Nothing you chose is lost.",
                        List.of(
                                new Refusal.Problem(
                                        "Rubber 2 has no second player. Choose one or leave the whole rubber empty.",
                                        "partner"),
                                new Refusal.Problem(
                                        "The sheets of this tie are open since 13:05. Speak to the desk.", ""))),
                TextField.of("name", TextField.Kind.LINE, "Name as called on court", "Søren Lind")
                        .withHint("In any script, as the player wants to hear it."),
                TextField.of("points", TextField.Kind.NUMBER, "Points of Harrow Lane", "31")
                        .withError("A game to 11 cannot end 31-7. Look at the card and type the points again."),
                SelectField.of("partner", "Rubber 2, second player", "Nobody yet", people())
                        .withError("Choose a second player."),
                ChoiceList.one("decider", "Who plays the decider for Millrace?", pairs())
                        .withHint("Harrow Lane learns it when both are in."),
                new Countdown(
                        "Seal this sheet by 13:05",
                        Instant.parse("2027-05-08T11:05:00Z"),
                        Instant.parse("2027-05-08T11:06:00Z"),
                        new Countdown.Words("Late, and still taken until 13:05", "Late: speak to the desk", ""),
                        ""),
                ties(),
                sheets(),
                List.of(card(), blankCard(), card(), blankCard()),
                table(),
                bracket(),
                notices(),
                next(),
                doNext(),
                new Receipt(
                        "Receipt for your sheet against Harrow Lane",
                        "9f2c6a0e4b7d1583c2e6f09a7b3d5e8144a0c9f37e6b2d1580c4a7f3e9d6b215",
                        "Given at 12:41. Both receipts become public at 13:05; after the opening anyone can check them.",
                        List.of(),
                        "#",
                        "How to check a receipt"),
                new Progress(
                        "proposal",
                        "Looking for a better sheet",
                        "Step 340 of 500. Best so far: 58 % to win the tie.",
                        340,
                        500,
                        "#",
                        Button.other("Stop and keep the best so far")),
                doubts(),
                wishes(),
                new EmptyPlace(
                        "The final stands here",
                        "when both semi-finals are played, not before 15:10.",
                        "#",
                        "Show the bracket"),
                new CopyText(
                        "copy-table",
                        "Pool A as text for a chat",
                        "Pool A after 5 of 6 ties\n1 Millrace 3 wins\n2 Harrow Lane 2 wins",
                        "Copy this text",
                        "Copied."),
                List.of(
                        SEALED,
                        OPENED,
                        PLAYING,
                        HELD,
                        new State(Mark.STOP, "Called off"),
                        new State(Mark.KEPT, "Both cards agree"),
                        FINAL,
                        new State(Mark.OLD, "13:00")));
    }

    private static Frame frame() {
        return new Frame(
                new Speech(Words.ofCodes(java.time.ZoneOffset.UTC), List.of()),
                "One of each piece",
                new Frame.Named("Lowland Clubs Day", "Lowland Clubs Day, 8 May 2027, Tollgate Hall", Optional.empty()),
                new Frame.Reader(
                        "Millrace", "You are here as captain of Millrace.", List.of("cards", "captain", "desk")),
                new Frame.Age("Version 14", "as of 12:58", "heard 12:57", Instant.parse("2027-05-08T10:58:00Z"), false),
                List.of(),
                Optional.of(new NavLink("#", "Hurt", false)),
                new Ways(
                        List.of(
                                new Ways.Place(
                                        new NavLink("#", "My ties", true),
                                        true,
                                        List.of(new NavLink("#", "Protest", false))),
                                new Ways.Place(new NavLink("#", "Advice", false), false, List.of()),
                                new Ways.Place(new NavLink("#", "Squad", false), false, List.of()),
                                new Ways.Place(new NavLink("#", "The hall", false), false, List.of())),
                        List.of(new NavLink("#", "Tables", false), new NavLink("#", "Notices", false)),
                        Optional.empty()));
    }

    private static List<Option> people() {
        return List.of(
                Option.of("tomas", "Tomáš Dvořák", false),
                new Option("lin", "林晓 Lin Xiao", "already in rubber 1", false, true),
                Option.of("jorge", "Jorge Peña", false));
    }

    private static List<Option> pairs() {
        return List.of(
                new Option(
                        "a",
                        "Ines Okafor and 林晓 Lin Xiao",
                        "54 % to win it, likely 47 to 61; rested 25 min.",
                        true,
                        false),
                new Option(
                        "b",
                        "Tomáš Dvořák and Jorge Peña",
                        "53 %: no real difference. Choose who wants it.",
                        false,
                        false),
                new Option("c", "Søren Lind and Ines Okafor", "Refused: Søren Lind is not checked in.", false, true));
    }

    private static List<TieLine> ties() {
        return List.of(
                new TieLine("Millrace", "3", "Saltmarsh", "1", 1, "10:00", "Courts 1 and 2", FINAL, "", "#", "Card"),
                new TieLine(
                        "Millrace",
                        "2",
                        "Harrow Lane",
                        "2",
                        0,
                        "11:30",
                        "Courts 1 and 2",
                        new State(Mark.HELD, "Decider to be named"),
                        "both captains asked at 12:50",
                        "#",
                        "Tie"),
                new TieLine(
                        "Saltmarsh",
                        "",
                        "Tollgate and District Racket Club",
                        "",
                        0,
                        "13:20",
                        "Courts 3 and 4",
                        new State(Mark.SEALED, "One sheet in"),
                        "opens at 13:05",
                        "#",
                        "Tie"));
    }

    private static List<SheetView> sheets() {
        var rows = List.of(
                new SheetView.Row("Rubber 1", "Ines Okafor", "林晓 Lin Xiao", ""),
                new SheetView.Row("Rubber 2", "Tomáš Dvořák", "Jorge Peña", ""),
                new SheetView.Row(
                        "Rubber 3",
                        "Aoife Byrne",
                        "فاطمة العلوي",
                        "replaces Søren Lind: injury, approved by the referee at 11:12"));
        return List.of(
                new SheetView(
                        "Millrace against Harrow Lane",
                        SEALED,
                        "12:41, replaced once. Opens 13:05.",
                        rows,
                        "Show the names"),
                new SheetView("Millrace against Saltmarsh", OPENED, "at 09:45 with the sheet of Saltmarsh", rows, ""),
                new SheetView(
                        "Saltmarsh against Tollgate",
                        new State(Mark.HELD, "Not in"),
                        "Due 13:05.",
                        List.of("Rubber 1", "Rubber 2", "Rubber 3", "Rubber 4", "Decider").stream()
                                .map(label -> new SheetView.Row(label, "", "", ""))
                                .toList(),
                        ""));
    }

    private static CardView card() {
        return new CardView(
                "Tie A-5",
                "11:30, courts 1 and 2",
                HELD,
                "Millrace",
                "Harrow Lane",
                List.of(
                        row(
                                "Rubber 1",
                                List.of("Ines Okafor", "林晓 Lin Xiao"),
                                List.of("Oddný Jónsdóttir", "Ravi Menon"),
                                "11",
                                "7",
                                1,
                                ""),
                        row(
                                "Rubber 2",
                                List.of("Tomáš Dvořák", "Jorge Peña"),
                                List.of("Ραφαήλ Νικολάου", "Marit Haugen"),
                                "9",
                                "11",
                                2,
                                ""),
                        row(
                                "Rubber 3",
                                List.of("Aoife Byrne", "فاطمة العلوي"),
                                List.of("Wanjiru Kamau", "Piet de Groot"),
                                "11",
                                "4",
                                1,
                                "Harrow Lane retired"),
                        row(
                                "Rubber 4",
                                List.of("Bo Xu", "Tomáš Dvořák"),
                                List.of("Oddný Jónsdóttir", "Marit Haugen"),
                                "6",
                                "11",
                                2,
                                ""),
                        row("Decider", List.of("", ""), List.of("", ""), "", "", 0, "")),
                "Rubbers won",
                "2",
                "2",
                "Signed: I. Okafor",
                "To be signed by Harrow Lane");
    }

    private static CardView blankCard() {
        var nobody = List.of("", "");
        return new CardView(
                "Tie A-6",
                "13:20, courts 3 and 4",
                NONE,
                "Saltmarsh",
                "Tollgate",
                List.of("Rubber 1", "Rubber 2", "Rubber 3", "Rubber 4", "Decider").stream()
                        .map(label -> row(label, nobody, nobody, "", "", 0, ""))
                        .toList(),
                "Rubbers won",
                "",
                "",
                "Signature of Saltmarsh",
                "Signature of Tollgate");
    }

    private static CardView.Row row(
            String label,
            List<String> home,
            List<String> away,
            String homePoints,
            String awayPoints,
            int winner,
            String note) {
        return new CardView.Row(label, home, away, homePoints, awayPoints, winner, note);
    }

    private static ReasonTable table() {
        return new ReasonTable(
                "pool-a",
                "Pool A after 5 of 6 ties",
                List.of(
                        new Column("Club", false),
                        new Column("Place", true),
                        new Column("Ties won", true),
                        new Column("Rubbers", true),
                        new Column("Difference", true),
                        new Column("Points", true),
                        new Column("Still to play", false)),
                List.of(
                        standing(
                                "Millrace",
                                List.of("1", "3", "9-3", "+6", "124-96", ""),
                                "Why 1st",
                                "Won 3 ties; nobody else won more than 2.",
                                ""),
                        standing(
                                "Harrow Lane",
                                List.of("2", "2", "8-5", "+3", "118-101", ""),
                                "Why 2nd",
                                "Level with Saltmarsh on 2 ties won; Harrow Lane won the tie between them 3-1.",
                                "the first two play the semi-finals"),
                        standing(
                                "Saltmarsh",
                                List.of("3", "2", "7-5", "+2", "110-104", "Tollgate, 13:20"),
                                "Why 3rd",
                                "Level with Harrow Lane on 2 ties won; lost the tie between them 1-3.",
                                ""),
                        standing(
                                "Tollgate and District Racket Club",
                                List.of("4", "0", "1-12", "-11", "74-125", "Saltmarsh, 13:20"),
                                "Why 4th",
                                "Won no tie.",
                                "")),
                "Provisional: one card is held. The first two go through.");
    }

    private static ReasonTable.Row standing(
            String club, List<String> numbers, String why, String reason, String lineBelow) {
        var cells = new ArrayList<>(List.of(new Cell(club, "#")));
        numbers.forEach(number -> cells.add(Cell.of(number)));
        return new ReasonTable.Row(cells, why, List.of(reason), lineBelow);
    }

    private static Bracket bracket() {
        var unknown = new Bracket.Entry("", "Winner of semi-final 2", "", false);
        return new Bracket(
                "Knockout",
                List.of(
                        new Bracket.Round(
                                "Semi-finals",
                                List.of(
                                        new Bracket.Slot(
                                                "Semi-final 1, 14:00, courts 1 and 2",
                                                "#",
                                                new Bracket.Entry("Millrace", "1st of pool A", "3", true),
                                                new Bracket.Entry("Greywater", "2nd of pool B", "1", false),
                                                FINAL),
                                        new Bracket.Slot(
                                                "Semi-final 2, 14:00, courts 3 and 4",
                                                "#",
                                                new Bracket.Entry("Ostrava Row", "1st of pool B", "", false),
                                                new Bracket.Entry("", "2nd of pool A", "", false, "now Harrow Lane"),
                                                NONE))),
                        new Bracket.Round(
                                "Final",
                                List.of(new Bracket.Slot(
                                        "Final, 15:30, courts 1 and 2",
                                        "",
                                        new Bracket.Entry("Millrace", "Winner of semi-final 1", "", false),
                                        unknown,
                                        NONE)))));
    }

    private static List<Notice> notices() {
        return List.of(new Notice(
                "Notice 7",
                "Saltmarsh against Tollgate starts later",
                "12:22",
                "13:00, court 12",
                "13:20, courts 3 and 4",
                "Court 12 is closed: wet floor.",
                "Touches Saltmarsh and Tollgate; both captains told.",
                "given by the organiser"));
    }

    private static List<NextCard> next() {
        return List.of(
                new NextCard(
                        "Aoife Byrne: your next rubber",
                        "3",
                        "13:20",
                        OPENED,
                        List.of(
                                new NextCard.Line("With", "فاطمة العلوي"),
                                new NextCard.Line("Against", "Wanjiru Kamau and Piet de Groot"),
                                new NextCard.Line("Rest", "40 min until then")),
                        ""),
                new NextCard(
                        "Ravi Menon: your next tie",
                        "",
                        "14:00",
                        NONE,
                        List.of(new NextCard.Line("Against", "Ostrava Row")),
                        "With whom stands here when the sheets open at 13:45."));
    }

    private static DoNext doNext() {
        return new DoNext(
                "Do this next",
                List.of(
                        new DoNext.Item(
                                "Two cards of tie A-5 differ in rubber 2.",
                                "Desk 9-11, volunteer 9-12. Look at the paper card.",
                                "",
                                HELD,
                                "#",
                                "Settle"),
                        new DoNext.Item(
                                "The sheet of Tollgate is not in.",
                                "Due 13:05. After that the late rule of the conditions holds.",
                                "13:05",
                                NONE,
                                "#",
                                "Look"),
                        new DoNext.Item(
                                "Court 2 is free.", "Nothing stands on it until 14:00.", "12:48", NONE, "#", "Call")),
                "Nothing waits for you.");
    }

    private static List<DoubtBar> doubts() {
        return List.of(
                new DoubtBar(
                        "Ines Okafor, 林晓 Lin Xiao", "53 %, likely 47 to 59", "n = 90 rallies", 47, 53, 59, 30, 70, 50),
                new DoubtBar(
                        "Tomáš Dvořák, Jorge Peña",
                        "51 %, likely 38 to 64",
                        "n = 21 rallies: not enough film",
                        38,
                        51,
                        64,
                        30,
                        70,
                        50));
    }

    private static WishList wishes() {
        return new WishList(
                "Wishes for this tie",
                List.of(
                        new WishList.Wish(
                                "Ines Okafor and 林晓 Lin Xiao together",
                                new State(Mark.KEPT, "Kept"),
                                "costs nothing",
                                "",
                                Button.other("")),
                        new WishList.Wish(
                                "Jorge Peña rests",
                                new State(Mark.STOP, "Not kept"),
                                "keeping it costs 6 points in 100 of the tie",
                                "#",
                                Button.other("Take this wish back"))),
                "No wishes yet.");
    }
}
