package tiewright.wording;

import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Collection;
import java.util.Locale;
import java.util.Map;
import java.util.MissingResourceException;
import java.util.Optional;
import java.util.ResourceBundle;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import tiewright.event.Club;
import tiewright.event.ClubId;
import tiewright.event.Directory;
import tiewright.event.Event;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.event.Refusal;
import tiewright.event.SetUpFact;
import tiewright.event.VisibleEvent;
import tiewright.scoring.ScoreFault;

/**
 * Makes sentences for one reader: the names that this reader may see, the hall's clock, one language.
 *
 * <p>A code such as {@code sheet.player-twice} is the key of its sentence in {@code sheet.properties}; data stand in it as
 * {@code {player}}.
 */
public final class Words {
    private static final Pattern PLACE = Pattern.compile("\\{([a-zA-Z0-9]+)}");
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm");

    private final Function<PlayerId, String> players;
    private final Function<ClubId, String> clubs;
    private final ZoneId zone;

    public Words(Function<PlayerId, String> players, Function<ClubId, String> clubs, ZoneId zone) {
        this.players = players;
        this.clubs = clubs;
        this.zone = zone;
    }

    /** With the names that this viewer may read. */
    public static Words of(VisibleEvent event) {
        return new Words(event::name, event::clubName, event.zone());
    }

    /** With full names: for officials, and for a captain who is told of the own squad. */
    public static Words of(Event event, Directory directory) {
        ZoneId zone = event.about().map(SetUpFact.EventDescribed::zone).orElse(ZoneOffset.UTC);
        return new Words(
                directory::name, club -> event.club(club).map(Club::name).orElse(club.code()), zone);
    }

    /** For commands and places without names: codes stand for themselves. */
    public static Words ofCodes(ZoneId zone) {
        return new Words(PlayerId::code, ClubId::code, zone);
    }

    public String sentence(Refusal refusal) {
        return sentence(refusal.code(), refusal.data());
    }

    /** The sentence of a code with its data filled in. A code without a sentence is a bug. */
    public String sentence(String code, Map<String, ?> data) {
        String pattern = text(code).orElseThrow(() -> new IllegalStateException("no words for " + code));
        Matcher place = PLACE.matcher(pattern);
        StringBuilder sentence = new StringBuilder();
        while (place.find()) {
            Object value = data.get(place.group(1));
            if (value == null) {
                throw new IllegalStateException("the words of " + code + " need " + place.group(1));
            }
            place.appendReplacement(sentence, Matcher.quoteReplacement(said(value)));
        }
        return place.appendTail(sentence).toString();
    }

    /** A value as a person reads it: names for codes, hours and minutes for moments, lists with commas. */
    public String said(Object value) {
        if (value instanceof PlayerId player) {
            return players.apply(player);
        }
        if (value instanceof ClubId club) {
            return clubs.apply(club);
        }
        if (value instanceof Pair pair) {
            return said(pair.first()) + " and " + said(pair.second());
        }
        if (value instanceof ScoreFault fault) {
            return ScoreWords.sentence(fault);
        }
        if (value instanceof Instant moment) {
            return CLOCK.format(LocalTime.ofInstant(moment, zone));
        }
        if (value instanceof LocalTime time) {
            return CLOCK.format(time);
        }
        if (value instanceof Optional<?> maybe) {
            return maybe.map(this::said).orElse("nobody");
        }
        if (value instanceof Collection<?> many) {
            return many.stream().map(this::said).collect(Collectors.joining(", "));
        }
        return value.toString();
    }

    /** Whether a code has its words. */
    public static boolean has(String code) {
        return text(code).isPresent();
    }

    private static Optional<String> text(String code) {
        int dot = code.indexOf('.');
        String room = dot < 0 ? code : code.substring(0, dot);
        try {
            return Optional.of(
                    ResourceBundle.getBundle("tiewright.wording." + room, Locale.ENGLISH, Words.class.getClassLoader())
                            .getString(code));
        } catch (MissingResourceException missing) {
            return Optional.empty();
        }
    }
}
