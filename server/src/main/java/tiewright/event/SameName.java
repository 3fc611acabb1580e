package tiewright.event;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * Whether two names may mean the same. Compared without case, accents and punctuation, in any script: Unicode
 * normalisation form KD (UAX 15) less the combining diacritical marks; vowel signs of other scripts stay, for there they
 * part names. Nicknames are not known to it.
 */
public final class SameName {
    /** Letters that Latin scripts do not build from a plain letter and a mark. */
    private static final Map<String, String> PLAIN =
            Map.of("ø", "o", "ł", "l", "đ", "d", "ð", "d", "ħ", "h", "æ", "ae", "œ", "oe", "þ", "th", "ŧ", "t");

    private static final int LIKE_FROM = 5;

    private final List<String> words;
    private final String inOrder;
    private final int[] letters;

    private SameName(List<String> words) {
        this.words = words;
        this.inOrder = words.stream().sorted().collect(Collectors.joining(" "));
        this.letters = inOrder.codePoints().toArray();
    }

    /** The name as it is compared: normalised once, compared often. */
    public static SameName of(String name) {
        return new SameName(words(name));
    }

    /** The same words, in whatever order. */
    public boolean is(SameName other) {
        return !words.isEmpty() && inOrder.equals(other.inOrder);
    }

    /** One has a first name where the other has its initial: <em>I. Brandt</em>, <em>Ida Brandt</em>, <em>Brandt, I.</em> */
    public boolean isShortened(SameName other) {
        return words.size() > 1
                && other.words.size() > 1
                && (startsAndEnds(first(), last(), other.first(), other.last())
                        || startsAndEnds(first(), last(), other.last(), other.first())
                        || startsAndEnds(last(), first(), other.first(), other.last())
                        || startsAndEnds(last(), first(), other.last(), other.first()));
    }

    /**
     * Different by one letter, in names of at least {@value #LIKE_FROM} letters with their words in order; not where they differ by a number or
     * an initial, as in <em>Owls 1</em> and <em>Owls 2</em>, for that was meant.
     */
    public boolean isLike(SameName other) {
        return Math.min(letters.length, other.letters.length) >= LIKE_FROM
                && atMostOneEdit(letters, other.letters)
                && !(differsInASign(other) && other.differsInASign(this));
    }

    private boolean differsInASign(SameName other) {
        List<String> own = new ArrayList<>(words);
        other.words.forEach(own::remove);
        return own.stream().allMatch(word -> isInitial(word) || word.chars().allMatch(Character::isDigit));
    }

    private static boolean startsAndEnds(String given, String family, String otherGiven, String otherFamily) {
        return family.equals(otherFamily) && !isInitial(family) && isInitialOf(given, otherGiven);
    }

    private static boolean isInitialOf(String one, String other) {
        return !one.equals(other)
                && (isInitial(one) && other.startsWith(one) || isInitial(other) && one.startsWith(other));
    }

    private static boolean isInitial(String word) {
        return word.codePointCount(0, word.length()) == 1;
    }

    /** Equal up to the first difference, and after one letter changed, left out or put in. */
    private static boolean atMostOneEdit(int[] a, int[] b) {
        int[] shorter = a.length <= b.length ? a : b;
        int[] longer = a.length <= b.length ? b : a;
        if (longer.length - shorter.length > 1) {
            return false;
        }
        int at = Arrays.mismatch(shorter, longer);
        int from = longer.length == shorter.length ? at + 1 : at;
        return Arrays.equals(shorter, from, shorter.length, longer, at + 1, longer.length);
    }

    private static List<String> words(String name) {
        String apart =
                Normalizer.normalize(name, Normalizer.Form.NFKD).replaceAll("\\p{InCombiningDiacriticalMarks}", "");
        String oneCase = apart.toUpperCase(Locale.ROOT).toLowerCase(Locale.ROOT);
        String letters = oneCase.codePoints()
                .mapToObj(Character::toString)
                .map(letter -> PLAIN.getOrDefault(letter, letter))
                .collect(Collectors.joining());
        return Arrays.stream(letters.split("[^\\p{L}\\p{M}\\p{N}]+"))
                .filter(word -> !word.isEmpty())
                .toList();
    }

    private String first() {
        return words.get(0);
    }

    private String last() {
        return words.get(words.size() - 1);
    }
}
