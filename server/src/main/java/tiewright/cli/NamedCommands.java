package tiewright.cli;

import java.util.List;
import java.util.concurrent.Callable;

/** The commands by their names, in the order in which help lists them. */
final class NamedCommands {
    private static final List<String> NAMES = List.of(
            "serve",
            "certificate",
            "backup",
            "restore",
            "check",
            "import",
            "export",
            "rules",
            "standings",
            "needs",
            "correct",
            "sheets-count",
            "receipt",
            "rubber-chance",
            "game",
            "order-game",
            "lineup",
            "decider",
            "ratings",
            "backtest",
            "timetable",
            "film",
            "rota",
            "erase",
            "rehearse");

    private NamedCommands() {}

    /** The one that is named alone, for taking all of them apart is half of what a short command takes; all for help. */
    static List<String> wanted(String first) {
        return NAMES.contains(first) ? List.of(first) : NAMES;
    }

    static Callable<Integer> of(String name) {
        return switch (name) {
            case "serve" -> new ServeCommand();
            case "certificate" -> new CertificateCommand();
            case "backup" -> new BackupCommand();
            case "restore" -> new RestoreCommand();
            case "check" -> new CheckCommand();
            case "import" -> new ImportCommand();
            case "export" -> new ExportCommand();
            case "erase" -> new EraseCommand();
            case "rehearse" -> new RehearseCommand();
            default -> aboutAFolder(name);
        };
    }

    private static Callable<Integer> aboutAFolder(String name) {
        return switch (name) {
            case "rules" -> new RulesCommand();
            case "standings" -> new StandingsCommand();
            case "needs" -> new NeedsCommand();
            case "correct" -> new CorrectCommand();
            case "sheets-count" -> new SheetsCountCommand();
            case "receipt" -> new ReceiptCommand();
            case "rubber-chance" -> new RubberChanceCommand();
            case "game" -> new GameCommand();
            case "order-game" -> new OrderGameCommand();
            case "lineup" -> new LineupCommand();
            case "decider" -> new DeciderCommand();
            case "ratings" -> new RatingsCommand();
            case "backtest" -> new BacktestCommand();
            case "timetable" -> new TimetableCommand();
            case "film" -> new FilmCommand();
            case "rota" -> new RotaCommand();
            default -> throw new IllegalArgumentException("there is no command " + name);
        };
    }
}
