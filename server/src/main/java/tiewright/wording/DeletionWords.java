package tiewright.wording;

import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.stream.Collectors;
import tiewright.event.Deletion;
import tiewright.event.NamesKept;
import tiewright.event.SetUpFact;

/** When private data go and what stays, in one line; and what is held, in words and counts. */
public final class DeletionWords {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.ENGLISH);
    private static final Words WORDS = Words.ofCodes(ZoneOffset.UTC);

    private DeletionWords() {}

    /** What everybody may read about it, in English. */
    public static String sentence(Deletion deletion, ZoneId zone) {
        return sentence(WORDS, deletion, zone);
    }

    /** The same in the reader's language. */
    public static String sentence(Words words, Deletion deletion, ZoneId zone) {
        Optional<SetUpFact.DeletionDated> promised = deletion.promised();
        String names = promised.map(SetUpFact.DeletionDated::names)
                .orElse(NamesKept.CODES)
                .code();
        return deletion.erasedAt()
                .map(at -> said(words, "deletion.gone." + names, at.atZone(zone).toLocalDate()))
                .or(() -> promised.map(one -> said(words, "deletion.goes." + names, one.date())))
                .orElseGet(() -> words.sentence("deletion.none", Map.of()));
    }

    private static String said(Words words, String key, LocalDate date) {
        return words.sentence(key, Map.of("date", words.date(date)));
    }

    /** 26 December 2026. */
    public static String day(LocalDate day) {
        return DAY.format(day);
    }

    /** What a kind is called; one that has no words yet by its own code. */
    public static String kind(String kind) {
        return kind(WORDS, kind);
    }

    /** The same in the reader's language. */
    public static String kind(Words words, String kind) {
        String key = "deletion.held." + kind;
        return Words.has(key) ? words.sentence(key, Map.of()) : kind;
    }

    /** Every kind that is there, with its count; "no names" where there is none. */
    public static String counts(SortedMap<String, Integer> counts) {
        String said = counts.entrySet().stream()
                .filter(count -> count.getValue() > 0)
                .map(count -> kind(count.getKey()).substring(0, 1).toLowerCase(Locale.ROOT)
                        + kind(count.getKey()).substring(1) + " " + count.getValue())
                .collect(Collectors.joining(", "));
        return said.isEmpty() ? WORDS.sentence("deletion.held.no-names", Map.of()) : said;
    }
}
