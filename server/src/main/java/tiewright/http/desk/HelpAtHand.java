package tiewright.http.desk;

import java.util.List;
import tiewright.event.VisibleEvent;
import tiewright.http.visit.Visit;

/** First aid, defibrillator and emergency number as the organiser entered them, or that each was not entered. */
final class HelpAtHand {
    private HelpAtHand() {}

    static List<String> lines(Visit visit) {
        VisibleEvent event = visit.event();
        return List.of(
                line(visit, "page-desk.first-aid-is", event.safety().firstAid(), "page-desk.where-first-aid-is-was"),
                line(
                        visit,
                        "page-desk.defibrillator-is",
                        event.safety().defibrillator(),
                        "page-desk.where-a-defibrillator-is-was"),
                line(
                        visit,
                        "page-desk.emergency-number-is",
                        event.safety().emergency(),
                        "page-desk.no-emergency-number-was-entered"));
    }

    private static String line(Visit visit, String key, String entered, String otherwise) {
        return entered.isEmpty() ? visit.say(otherwise) : visit.say(key, "entered", entered);
    }
}
