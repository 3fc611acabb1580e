package tiewright.ledger;

import static tiewright.schema.DefaultSchema.DEFAULT_SCHEMA;

import java.lang.reflect.Constructor;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.Table;
import org.jspecify.annotations.Nullable;
import tiewright.event.Fact;
import tiewright.event.FactKind;
import tiewright.event.Refusal;

/**
 * Facts as rows and rows as facts. A kind of fact, its record and its table find each other by name: {@code TIE_TIMED},
 * {@code TieTimed}, {@code tie_timed}; a column is called like the record's component unless SQL needs that word.
 */
final class FactRows {
    private static final Map<String, String> RENAMED = Map.of(
            "by",
            "signed_by",
            "order",
            "placing",
            "from",
            "from_time",
            "until",
            "until_time",
            "date",
            "on_date",
            "start",
            "start_time",
            "after",
            "after_value",
            "before",
            "before_value",
            "text",
            "words");

    private record Part(String name, Method accessor, Field<Object> column, Codec codec) {}

    /** The table of a kind and how its record is taken apart and put together. */
    private record Shape(Table<?> table, Constructor<?> constructor, List<Part> parts) {}

    private static final Map<FactKind, Class<?>> RECORDS = records();
    private static final Map<FactKind, Shape> SHAPES = new ConcurrentHashMap<>(); // made when first asked for

    private FactRows() {}

    static Table<?> table(FactKind kind) {
        return shape(kind).table;
    }

    /**
     * The columns of the fact, but for its seq.
     *
     * @throws IllegalArgumentException if the fact would not read back as it is
     */
    static Map<Field<Object>, @Nullable Object> row(Fact fact) {
        Map<Field<Object>, @Nullable Object> row = columns(fact);
        List<Object> readBack = new ArrayList<>();
        for (Part part : shape(fact.kind()).parts) {
            readBack.add(part.codec.read().apply(row.get(part.column)));
        }
        if (!make(shape(fact.kind()), readBack.toArray()).equals(fact)) {
            throw new IllegalArgumentException(
                    "a fact of the kind " + fact.kind().code() + " cannot be kept as it is");
        }
        return row;
    }

    /** The same without asking whether it would read back. */
    static Map<Field<Object>, @Nullable Object> columns(Fact fact) {
        Map<Field<Object>, @Nullable Object> row = new LinkedHashMap<>();
        for (Part part : shape(fact.kind()).parts) {
            row.put(part.column, part.codec.write().apply(value(part, fact)));
        }
        return row;
    }

    static Fact fact(FactKind kind, Record row) {
        Shape shape = shape(kind);
        return make(
                shape,
                shape.parts.stream()
                        .map(part -> part.codec.read().apply(row.get(part.column)))
                        .toArray());
    }

    /** A reason for every text that is longer than its column. */
    static List<Refusal> tooLong(Fact fact) {
        List<Refusal> reasons = new ArrayList<>();
        for (Part part : shape(fact.kind()).parts) {
            int longest = part.column.getDataType().length();
            if (part.codec.write().apply(value(part, fact)) instanceof String text && text.length() > longest) {
                reasons.add(Refusal.of("ledger.too-long")
                        .with("longest", longest)
                        .with("length", text.length())
                        .at(part.name));
            }
        }
        return reasons;
    }

    private static Shape shape(FactKind kind) {
        return SHAPES.computeIfAbsent(
                kind,
                any -> shape(
                        Objects.requireNonNull(DEFAULT_SCHEMA.getTable(kind.code()), kind::code),
                        Objects.requireNonNull(RECORDS.get(kind), kind::code)));
    }

    private static Map<FactKind, Class<?>> records() {
        Map<FactKind, Class<?>> records = new EnumMap<>(FactKind.class);
        records(Fact.class).forEach(type -> records.put(FactKind.of(snake(type.getSimpleName())), type));
        return records;
    }

    private static Stream<Class<?>> records(Class<?> type) {
        return type.isRecord()
                ? Stream.of(type)
                : Arrays.stream(type.getPermittedSubclasses()).flatMap(FactRows::records);
    }

    private static Shape shape(Table<?> table, Class<?> type) {
        RecordComponent[] components = type.getRecordComponents();
        try {
            return new Shape(
                    table,
                    type.getConstructor(Arrays.stream(components)
                            .map(RecordComponent::getType)
                            .toArray(Class<?>[]::new)),
                    Arrays.stream(components)
                            .map(component -> part(table, component))
                            .toList());
        } catch (NoSuchMethodException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    @SuppressWarnings("unchecked") // the codec was chosen by the type of the component
    private static Part part(Table<?> table, RecordComponent component) {
        String name = RENAMED.getOrDefault(component.getName(), snake(component.getName()));
        Field<?> column = Optional.<Field<?>>ofNullable(table.field(name))
                .orElseThrow(
                        () -> new IllegalStateException("the table " + table.getName() + " has no column " + name));
        return new Part(
                component.getName(),
                component.getAccessor(),
                (Field<Object>) column,
                Codec.of(component.getGenericType()));
    }

    private static String snake(String camel) {
        return camel.replaceAll("(?<=.)([A-Z])", "_$1").toLowerCase(Locale.ROOT);
    }

    private static Object value(Part part, Fact fact) {
        try {
            return part.accessor.invoke(fact);
        } catch (ReflectiveOperationException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    private static Fact make(Shape shape, Object[] values) {
        try {
            return (Fact) shape.constructor.newInstance(values);
        } catch (ReflectiveOperationException unreadable) {
            throw new IllegalStateException("a row of " + shape.table.getName() + " makes no fact", unreadable);
        }
    }
}
