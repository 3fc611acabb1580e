package tiewright.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.Table;
import org.jooq.exception.DataAccessException;
import org.jooq.impl.DSL;
import org.jooq.impl.SQLDataType;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tiewright.schema.DefaultSchema;

/** What the service itself can do to the tables: add to the ledger, and nothing else to it. */
class ServiceUserTest {
    @TempDir
    Path folder;

    @Test
    void the_database_itself_refuses_to_change_or_delete_a_fact() {
        try (Ledger ledger = Ledger.open(folder, Asked.CLOCK)) {
            ledger.decide(Asked.request("k"), Asked.facts(ExampleFacts.all()));
        }
        try (Store store = Store.open(folder)) {
            DSLContext jooq = store.jooq();
            List<Table<?>> tables = DefaultSchema.DEFAULT_SCHEMA.getTables().stream()
                    .filter(t -> !t.getName().startsWith("private_"))
                    .toList();
            assertThat(tables).hasSizeGreaterThan(37);
            for (Table<?> table : tables) {
                assertThat(jooq.fetchCount(table)).as(table.getName()).isPositive();
                assertRefused(table, () -> jooq.deleteFrom(table).execute());
                assertRefused(table, () -> update(jooq, table, table.field(0)));
                assertRefused(table, () -> jooq.truncate(table).execute());
                assertRefused(table, () -> jooq.dropTable(table).execute());
                assertRefused(
                        table,
                        () -> jooq.alterTable(table)
                                .addColumn("more", SQLDataType.INTEGER)
                                .execute());
            }
        }
        try (Ledger ledger = Ledger.open(folder, Asked.CLOCK)) {
            assertThat(ledger.facts(0)).hasSameSizeAs(ExampleFacts.all());
        }
    }

    @Test
    void what_is_private_can_be_erased() {
        try (Store store = Store.open(folder)) {
            DefaultSchema.DEFAULT_SCHEMA.getTables().stream()
                    .filter(t -> t.getName().startsWith("private_"))
                    .forEach(table ->
                            assertThat(store.jooq().deleteFrom(table).execute()).isZero());
        }
    }

    @Test
    void the_service_makes_no_tables_and_no_users() {
        try (Store store = Store.open(folder)) {
            DSLContext jooq = store.jooq();
            assertThatThrownBy(() -> jooq.createTable("more")
                            .column("a", SQLDataType.INTEGER)
                            .execute())
                    .isInstanceOf(DataAccessException.class);
            assertThatThrownBy(() -> jooq.grant(DSL.privilege("DELETE"))
                            .on(DefaultSchema.DEFAULT_SCHEMA.getTables().get(0))
                            .to(DSL.user("SERVICE"))
                            .execute())
                    .isInstanceOf(DataAccessException.class);
        }
    }

    private static <T> int update(DSLContext jooq, Table<?> table, Field<T> column) {
        return jooq.update(table).set(column, column).execute();
    }

    private static void assertRefused(Table<?> table, Callable<?> change) {
        assertThatThrownBy(change::call)
                .as(table.getName())
                .isInstanceOf(DataAccessException.class)
                .hasMessageMatching("(?s).*(Not enough rights|Admin rights|Cannot truncate).*");
    }
}
