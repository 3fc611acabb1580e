package tiewright.ledger;

import java.sql.Connection;
import org.jooq.DSLContext;
import org.jooq.SQLDialect;
import org.jooq.conf.RenderQuotedNames;
import org.jooq.conf.Settings;
import org.jooq.impl.DSL;

/** jOOQ as the ledger uses it: names as the migrations write them, no advertisement, no statement in any log. */
final class Jooq {
    static {
        System.setProperty("org.jooq.no-logo", "true");
        System.setProperty("org.jooq.no-tips", "true");
    }

    private Jooq() {}

    static DSLContext on(Connection connection) {
        return DSL.using(
                connection,
                SQLDialect.H2,
                new Settings()
                        .withRenderQuotedNames(RenderQuotedNames.NEVER)
                        .withRenderSchema(false)
                        .withExecuteLogging(false));
    }
}
