package tiewright.ledger;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import tiewright.conditions.Conditions;
import tiewright.conditions.Withdrawal;
import tiewright.event.ClubId;
import tiewright.event.CorrectionChoice;
import tiewright.event.ExchangeId;
import tiewright.event.How;
import tiewright.event.NamesKept;
import tiewright.event.Pair;
import tiewright.event.Penalty;
import tiewright.event.PlayerId;
import tiewright.event.Role;
import tiewright.event.RubberNo;
import tiewright.event.Saying;
import tiewright.event.Sheet;
import tiewright.event.Side;
import tiewright.event.Slot;
import tiewright.event.Stage;
import tiewright.event.TieId;

/** How the values of one type stand in one column, and how they are read back. Only empty optionals are null there. */
record Codec(Function<Object, @Nullable Object> write, Function<@Nullable Object, Object> read) {
    private static final Map<Class<?>, Codec> SIMPLE = Map.ofEntries(
            asItIs(String.class),
            asItIs(int.class),
            asItIs(boolean.class),
            asItIs(LocalDate.class),
            Map.entry(
                    LocalTime.class,
                    new Codec(time -> ((LocalTime) time).truncatedTo(ChronoUnit.SECONDS), column -> column)),
            text(ZoneId.class, ZoneId::getId, ZoneId::of),
            text(ClubId.class, ClubId::code, ClubId::of),
            text(PlayerId.class, PlayerId::code, PlayerId::of),
            text(TieId.class, TieId::code, TieId::of),
            text(RubberNo.class, RubberNo::toString, known(RubberNo::parse)),
            text(Role.class, Role::code, known(Role::parse)),
            text(Stage.class, Stage::code, known(Stage::parse)),
            text(Side.class, Side::code, Side::of),
            text(How.class, How::code, known(How::parse)),
            text(Withdrawal.class, Withdrawal::code, known(Withdrawal::parse)),
            text(CorrectionChoice.class, CorrectionChoice::code, known(CorrectionChoice::parse)),
            text(NamesKept.class, NamesKept::code, known(NamesKept::parse)),
            text(Penalty.class, Penalty::code, known(Penalty::parse)),
            text(Conditions.class, Conditions::text, Conditions::ofText),
            text(ExchangeId.class, Texts::exchange, Texts::exchange),
            text(Sheet.class, Sheet::canonical, Texts::sheet),
            text(Pair.class, Texts::pair, Texts::pair),
            text(Saying.class, Saying::text, Saying::ofText),
            text(Slot.class, Texts::slot, Texts::slot));

    /** The codec of a record component's type. */
    static Codec of(Type type) {
        if (type instanceof ParameterizedType generic) {
            return switch (generic.getTypeName().replaceAll("[a-z]+[.$]", "")) {
                case "List<ClubId>" -> text(Texts::clubs, Texts::clubs);
                case "List<Score>" -> text(Texts::scores, Texts::scores);
                case "SortedMap<String, Integer>" -> text(Texts::counts, Texts::counts);
                case "SortedMap<String, List<ClubId>>" -> text(Texts::pools, Texts::pools);
                default -> optional(generic);
            };
        }
        if (type == OptionalInt.class) {
            return new Codec(
                    value -> ((OptionalInt) value).isPresent() ? ((OptionalInt) value).getAsInt() : null,
                    column -> column == null ? OptionalInt.empty() : OptionalInt.of((Integer) column));
        }
        return Optional.ofNullable(SIMPLE.get(type)).orElseThrow(() -> unknown(type));
    }

    private static Codec optional(ParameterizedType generic) {
        if (generic.getRawType() != Optional.class) {
            throw unknown(generic);
        }
        Codec inner = of(generic.getActualTypeArguments()[0]);
        return new Codec(
                value -> ((Optional<?>) value).map(inner.write).orElse(null),
                column -> Optional.ofNullable(column).map(inner.read));
    }

    private static Map.Entry<Class<?>, Codec> asItIs(Class<?> type) {
        return Map.entry(type, new Codec(value -> value, column -> column));
    }

    private static <T> Map.Entry<Class<?>, Codec> text(
            Class<T> type, Function<T, String> write, Function<String, T> read) {
        return Map.entry(type, text(write, read));
    }

    @SuppressWarnings("unchecked") // asked by the type of the component alone, so value and column are of it
    private static <T> Codec text(Function<T, String> write, Function<String, T> read) {
        return new Codec(value -> write.apply((T) value), column -> read.apply((String) column));
    }

    private static <T> Function<String, T> known(Function<String, Optional<T>> parse) {
        return code ->
                parse.apply(code).orElseThrow(() -> new IllegalArgumentException("unknown code \"" + code + "\""));
    }

    private static IllegalStateException unknown(Type type) {
        return new IllegalStateException("no column can hold a " + type.getTypeName());
    }
}
