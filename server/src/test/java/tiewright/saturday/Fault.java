package tiewright.saturday;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * A fault that the program once had, or one like it: a change of a line of its source that brings it back. The program itself has no
 * switch for it.
 */
enum Fault {
    REPLACING_SHOWS(
            1,
            "event/Fold.java",
            "reach.toClub(((ExchangeFact.SheetSealed) fact).club(), seq)",
            "reach.toEverybody(seq, at)"),
    ALL_CAPTAINS_DRAW_THE_SAME(
            4, "ledger/SealedSheets.java", "seal.chance(club.code() + \",\" + question)", "seal.chance(\"1\")"),
    WALL_SHOWS_MINORS(5, "http/everybody/PaperPages.java", "visit.asStranger().event()", "visit.event()"),
    NOTHING_OPENS_BY_ITSELF(
            7,
            "sheet/Exchanges.java",
            "canOpen(event, exchange) && isTime",
            "canOpen(event, exchange) && now.getNano() > 0 && isTime"),
    OPENING_TAKEN_FOR_A_REPEAT(7, "http/Opener.java", "\"open/\" + seq + \"/\"", "\"open/\""),
    READS_AS_CLOSED_IN_GRACE(
            8,
            "http/visit/Countdowns.java",
            "now.isBefore(closes) ? still : late",
            "now.isBefore(closes) ? late : late"),
    FREE_BEFORE_THE_DECIDER(
            10,
            "http/everybody/Waiting.java",
            ".flatMap(tie -> mayBeNeeded(tie).stream())",
            ".filter(tie -> false).flatMap(tie -> mayBeNeeded(tie).stream())"),
    TWO_RUBBERS_ON_A_COURT(
            11, "desk/Courts.java", "if (left.contains(rubber)) {", "if (left.contains(rubber) && left.isEmpty()) {"),
    WITHDRAWN_STILL_COUNTS_DOWN(12, "http/visit/Countdowns.java", "|| !visit.event().goesOn(tie)", ""),
    STARTS_BEFORE_ITS_TIME(13, "desk/Earlier.java", "filter(club -> !told.contains(club))", "filter(club -> false)"),
    NOTICE_FOLLOWS_THE_SLOT(
            14,
            "http/visit/NoticeViews.java",
            "notice.after().map(words::saying).orElse(\"\")",
            "notice.tie().flatMap(event::tie).map(new TieViews(event)::when).orElse(\"\")"),
    NOBODY_MUST_BE_TOLD(15, "desk/RetimeTie.java", "List.copyOf(MayPlay.of(event, tie))", "List.of()"),
    LIST_AND_DESK_DISAGREE(
            16,
            "http/visit/DoNextViews.java",
            "String tie = item.tie().map(TieId::code).orElse(\"\");",
            "String tie = item.tie().map(TieId::code).orElse(\"\"); if (item.kind() == Kind.TIE_TO_CALL) { return \"/ties\"; }"),
    NEITHER_WON_NOR_LOST(17, "http/visit/OwnResult.java", "(result + \" \" + ", "(\"\" + "),
    TWO_PEOPLE_ASKED_AGAIN(
            19,
            "event/Disputes.java",
            "return namesakes.stream().anyMatch(said -> said.isOf(player, other));",
            "return namesakes.isEmpty() && player.equals(other);"),
    HURT_SEALED_WITHOUT_A_WORD(
            20, "http/captain/HurtFirst.java", "!named.isEmpty() && !form", "named.size() > 99 && !form"),
    OLD_LOOKS_FRESH(
            22, "http/visit/Frames.java", "event.clock(event.now())))", "event.clock(event.now().minusSeconds(600))))"),
    OFFERED_AND_CLOSED(
            23, "http/captain/OwnLinksPage.java", "routes.get(Door.CAPTAIN, HERE", "routes.get(Door.DESK, HERE"),
    COUNTS_TWICE(
            25, "http/visit/Stamps.java", "sent = form.text(KEY).isEmpty() ?", "sent = !form.text(KEY).isEmpty() ?"),
    CHANGED_FORM_TAKEN_FOR_A_REPEAT(
            26, "http/visit/Stamps.java", "visit.ctx().path(), form.content(ADDED))", "visit.ctx().path())");

    private static final Path SOURCES = Path.of("src/main/java/tiewright");

    private final int promise;
    private final String file;
    private final String right;
    private final String wrong;

    Fault(int promise, String file, String right, String wrong) {
        this.promise = promise;
        this.file = file;
        this.right = right;
        this.wrong = wrong;
    }

    /** The promise that it breaks. */
    int promise() {
        return promise;
    }

    /** The name of the class that holds it. */
    String holder() {
        return "tiewright." + file.replace(".java", "").replace('/', '.');
    }

    /** How often the line that it changes stands in its file: once, or the fault is none. */
    int places() {
        return asItIs().split(java.util.regex.Pattern.quote(right), -1).length - 1;
    }

    /** The whole file with the fault in it. */
    String source() {
        return asItIs().replace(right, wrong);
    }

    private String asItIs() {
        try {
            return Files.readString(SOURCES.resolve(file));
        } catch (IOException gone) {
            throw new UncheckedIOException(gone);
        }
    }
}
