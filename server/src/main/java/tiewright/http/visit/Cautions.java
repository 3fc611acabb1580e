package tiewright.http.visit;

import java.util.List;
import java.util.stream.Stream;
import tiewright.event.VisibleEvent;
import tiewright.wording.DeletionWords;
import tiewright.wording.Words;

/** The usual cautions, in one place. They defer to people: the organiser, first aid, licensed helpers, local rules. */
public final class Cautions {
    public static List<String> ofTheDesk(Words words) {
        return said(
                words,
                "page-visit.caution.hurt",
                "page-visit.caution.weather",
                "page-visit.caution.penalties",
                "page-visit.caution.private");
    }

    public static List<String> whenSomebodyIsHurt(Words words) {
        return said(words, "page-visit.caution.stay", "page-visit.caution.licensed", "page-visit.caution.never-why");
    }

    private static List<String> said(Words words, String... codes) {
        return Stream.of(codes).map(words::say).toList();
    }

    /** Beside every chance: what it rests on, and whose decision it stays. */
    public static String ofAdvice(Words words) {
        return words.say("page-visit.caution.advice");
    }

    private Cautions() {}

    /** Where somebody gives data: with the day on which they are deleted. */
    public static List<String> with(List<String> cautions, VisibleEvent event) {
        return Stream.concat(
                        cautions.stream(),
                        Stream.of(DeletionWords.sentence(Words.of(event), event.deletion(), event.zone())))
                .toList();
    }

    /** What a captain is asked before somebody who is marked as hurt or ill is named again. */
    public static String beforeNaming(Words words, String name) {
        return words.say("page-visit.caution.before-naming", "name", name);
    }
}
