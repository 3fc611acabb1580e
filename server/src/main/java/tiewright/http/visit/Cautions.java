package tiewright.http.visit;

import java.util.List;
import java.util.stream.Stream;
import tiewright.event.VisibleEvent;
import tiewright.wording.DeletionWords;

/** The usual cautions, in one place. They defer to people: the organiser, first aid, licensed helpers, local rules. */
public final class Cautions {
    public static final List<String> OF_THE_DESK = List.of(
            "Somebody is hurt or ill: stop the court, call first aid, say the court number aloud. Nothing on this screen comes first."
                    + " It is no medical advice; a licensed person decides who goes on.",
            "Heat, rain, a wet floor: the organiser and the rules of the place decide. A number on a thermometer is not a clearance;"
                    + " stop if anyone feels ill.",
            "Forfeits, defaults and penalties are given by people. The tool remembers them and gives none.",
            "Birth years, contacts and health stay off the public pages; minors are shown by first name and initial.");

    public static final List<String> WHEN_SOMEBODY_IS_HURT = List.of(
            "Stop the court, stay with the person, call first aid. Chest pain, a faint or a collapse: call the emergency number first and"
                    + " have the defibrillator brought. Nothing on this screen comes before that.",
            "This is no medical advice. A licensed person decides who goes on; the referee's ruling stands, this screen is an aid.",
            "In public this reads \"stopped\", \"retired\" or \"unavailable\", never why.");

    public static final String OF_ADVICE =
            "Small samples: this describes past results and a captain's own judgement, it does not judge a person. You decide.";

    private Cautions() {}

    /** Where somebody gives data: with the day on which they are deleted. */
    public static List<String> with(List<String> cautions, VisibleEvent event) {
        return Stream.concat(cautions.stream(), Stream.of(DeletionWords.sentence(event.deletion(), event.zone())))
                .toList();
    }

    /** What a captain is asked before somebody who is marked as hurt or ill is named again. */
    public static String beforeNaming(String name) {
        return name + " is marked as hurt or ill today. Ask " + name
                + ", and first aid or the referee, before you name " + name
                + ". Nobody is barred here: who gave up one rubber may be eligible for the next; a licensed person decides who is fit to play.";
    }
}
