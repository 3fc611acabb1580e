package tiewright.bench;

import io.javalin.Javalin;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;

/** A service with one page, a database opened for it and one row read: what the start is compared with. The folder is the argument. */
final class BareJavalin {
    private BareJavalin() {}

    public static void main(String[] args) throws SQLException {
        Connection database = DriverManager.getConnection("jdbc:h2:file:" + args[0] + "/bare", "SA", "");
        String word = row(database);
        Javalin bare = Javalin.create(config -> {
                    config.startup.showJavalinBanner = false;
                    config.jetty.host = "127.0.0.1";
                    config.jetty.port = 0;
                    config.routes.get("/", ctx -> ctx.html("<!doctype html><title>bare</title><p>" + word));
                })
                .start();
        System.out.println("Bare page at http://127.0.0.1:" + bare.port());
    }

    private static String row(Connection database) throws SQLException {
        try (var statement = database.createStatement()) {
            statement.execute("CREATE TABLE IF NOT EXISTS page (word VARCHAR(20) PRIMARY KEY)");
            statement.execute("MERGE INTO page VALUES ('A page.')");
            try (var rows = statement.executeQuery("SELECT word FROM page")) {
                rows.next();
                return rows.getString(1);
            }
        }
    }
}
