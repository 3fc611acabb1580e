package tiewright.wording;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import tiewright.conditions.Conditions;
import tiewright.conditions.RubberKinds;
import tiewright.event.Club;
import tiewright.event.ClubId;
import tiewright.event.Directory;
import tiewright.event.Event;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.event.Refusal;
import tiewright.event.RubberNo;
import tiewright.event.Saying;
import tiewright.event.SetUpFact;
import tiewright.event.VisibleEvent;
import tiewright.scoring.ScoreFault;

/**
 * Makes sentences for one reader: the names that this reader may see, the hall's clock, one language.
 *
 * <p>A code such as {@code sheet.player-twice} is the key of its sentence in {@code sheet.properties}; {@link Message}
 * says how data stand in it, such as {@code {player}}.
 */
public final class Words {
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm");

    private final Language language;
    private final Function<PlayerId, String> players;
    private final Function<ClubId, String> clubs;
    private final ZoneId zone;
    private final Supplier<RubberKinds> kinds;

    public Words(Language language, Function<PlayerId, String> players, Function<ClubId, String> clubs, ZoneId zone) {
        this.language = language;
        this.players = players;
        this.clubs = clubs;
        this.zone = zone;
        this.kinds = () -> RubberKinds.OPEN;
    }

    private Words(Words others, Supplier<Conditions> conditions) {
        this.language = others.language;
        this.players = others.players;
        this.clubs = others.clubs;
        this.zone = others.zone;
        this.kinds = () -> conditions.get().tieRubbers().kinds();
    }

    /** With the names that this viewer may read, in the language of the viewer. */
    public static Words of(VisibleEvent event) {
        Words words = new Words(Language.of(event.language()), event::name, event::clubName, event.zone());
        return new Words(words, event::conditions);
    }

    /** In English, with full names: for commands. */
    public static Words of(Event event, Directory directory) {
        return of(Language.ENGLISH, event, directory);
    }

    /** With full names: for officials, and for a captain who is told of the own squad. */
    public static Words of(Language language, Event event, Directory directory) {
        ZoneId zone = event.about().map(SetUpFact.EventDescribed::zone).orElse(ZoneOffset.UTC);
        Words words = new Words(
                language,
                directory::name,
                club -> event.club(club).map(Club::name).orElse(club.code()),
                zone);
        return new Words(words, event::conditions);
    }

    /** In English, for commands and places without names: codes stand for themselves. */
    public static Words ofCodes(ZoneId zone) {
        return new Words(Language.ENGLISH, PlayerId::code, ClubId::code, zone);
    }

    public String sentence(Refusal refusal) {
        return sentence(refusal.code(), refusal.data());
    }

    /** What a notice or a ruling says; what a person typed stays as it is. */
    public String saying(Saying saying) {
        if (saying.isTyped()) {
            return saying.words();
        }
        Map<String, Object> data = new HashMap<>(saying.facts());
        data.putAll(saying.parts());
        return sentence(saying.code(), data);
    }

    /** The sentence of a code with its data filled in. A code without a sentence is a bug. */
    public String sentence(String code, Map<String, ?> data) {
        return language.say(code, data, this::said);
    }

    /** The same, with the data as names and values in turn. */
    public String say(String code, Object... namesAndValues) {
        Map<String, Object> data = new HashMap<>();
        for (int i = 0; i < namesAndValues.length; i += 2) {
            data.put((String) namesAndValues[i], namesAndValues[i + 1]);
        }
        return sentence(code, data);
    }

    /** The same for a viewer of whom no other words are wanted. */
    public static String say(VisibleEvent event, String code, Object... namesAndValues) {
        return of(event).say(code, namesAndValues);
    }

    /** 26 December 2026. */
    public String date(LocalDate day) {
        return day("language.date", day);
    }

    /** Saturday 26 December 2026. */
    public String weekdayAndDate(LocalDate day) {
        return day("language.weekday-and-date", day);
    }

    private String day(String pattern, LocalDate day) {
        return DateTimeFormatter.ofPattern(say(pattern), Locale.forLanguageTag(language.tag()))
                .format(day);
    }

    public Language language() {
        return language;
    }

    /** Parts in one line, joined as {@link Message} says. */
    String list(List<String> parts, String kind) {
        return language.list(parts, kind);
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
            return list(List.of(said(pair.first()), said(pair.second())), "and");
        }
        if (value instanceof Instant moment) {
            return CLOCK.format(LocalTime.ofInstant(moment, zone));
        }
        if (value instanceof LocalTime time) {
            return CLOCK.format(time);
        }
        if (value instanceof RubberNo rubber) {
            return rubber(rubber);
        }
        return sentenceInside(value);
    }

    /** Its number, and beside it the kind wherever not all rubbers are open. */
    private String rubber(RubberNo rubber) {
        String kind = kind(rubber);
        return kind.isEmpty()
                ? rubber.toString()
                : say("conditions.rubber-of-kind", "number", rubber.number(), "of", kind);
    }

    /** The kind of a rubber in a word; empty where all are open, and for the decider, which always is. */
    public String kind(RubberNo rubber) {
        RubberKinds all = kinds.get();
        return all.areOpen() || rubber.isDecider()
                ? ""
                : say(
                        "conditions.kind-in-a-word",
                        "kind",
                        all.of(rubber.number()).code());
    }

    /** What has words of its own, alone or several; any other value as it is written. */
    private String sentenceInside(Object value) {
        if (value instanceof Saying saying) {
            return saying(saying);
        }
        if (value instanceof Refusal refusal) {
            return sentence(refusal);
        }
        if (value instanceof ScoreFault fault) {
            return ScoreWords.sentence(fault, this);
        }
        if (value instanceof Optional<?> maybe) {
            return maybe.map(this::said).orElseGet(() -> say("language.nobody"));
        }
        if (value instanceof Collection<?> many) {
            return list(many.stream().map(this::said).toList(), "plain");
        }
        return value.toString();
    }

    /** Whether a code has its words. */
    public static boolean has(String code) {
        return Language.ENGLISH.has(code);
    }
}
