package tiewright.correction;

import java.util.List;
import tiewright.conditions.Setting;
import tiewright.desk.CallToCourt;
import tiewright.desk.SignTable;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.ExchangeFact;
import tiewright.event.ExchangeId;
import tiewright.event.RubberNo;
import tiewright.event.TieId;

/** Two pools of two clubs, a final and a tie for third place; three rubbers, so that one swapped score turns a tie. */
public final class CupDay {
    private CupDay() {}

    /** Pools played and signed: N and E lead, S and W follow. */
    public static Days signed() {
        return Days.aDay()
                .with(Setting.RUBBERS, "3")
                .clubs("N", "S", "E", "W")
                .courts("1", "2")
                .poolTie("A1", "A", 1, "N", "S")
                .poolTie("B1", "B", 1, "E", "W")
                .knockoutTie("F", 1, "A-1", "B-1")
                .knockoutTie("P3", 1, "A-2", "B-2")
                .timed("F", "13:00", "1")
                .timed("P3", "13:00", "2")
                .opened("A1")
                .cards("A1", "11-5", "11-6", "4-11")
                .opened("B1")
                .cards("B1", "11-2", "11-3", "11-4")
                .at("12:00")
                .by(Days.referee())
                .does(new SignTable("A", "R. Signer"))
                .does(new SignTable("B", "R. Signer"));
    }

    /** And then the final was opened, called and begun, and one sheet for third place is sealed. */
    public static Days advanced() {
        Days day = signed().opened("F").at("13:02");
        day.does(new CallToCourt(TieId.of("F"), RubberNo.of(1), "1"))
                .at("13:20")
                .card("F", "1", "11-3");
        return day.fact(new ExchangeFact.SheetSealed(
                        ExchangeId.sheets(TieId.of("P3")), ClubId.of("S"), "1".repeat(64), false))
                .at("13:30");
    }

    static List<String> lines(Impact impact) {
        return impact.nodes().stream()
                .map(node -> node.kind().code() + " " + node.subjectText() + ": "
                        + node.before().map(Object::toString).orElse("-") + " > "
                        + node.after().map(Object::toString).orElse("-") + " ("
                        + node.state().code() + ")")
                .toList();
    }
}
