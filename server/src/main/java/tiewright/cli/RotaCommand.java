package tiewright.cli;

import java.io.PrintWriter;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import tiewright.event.Player;
import tiewright.event.PlayerId;
import tiewright.film.Rota;
import tiewright.plainfiles.EventFolder;
import tiewright.plainfiles.PlainFile;
import tiewright.wording.FilmWords;
import tiewright.wording.Words;

@Command(
        name = "rota",
        description = "A practice rota for a club: any two players are partners once and opponents twice.",
        mixinStandardHelpOptions = true)
final class RotaCommand implements Callable<Integer> {
    private static final int IMPOSSIBLE = 4;

    @Spec
    private CommandSpec spec;

    @Mixin
    private ClubOfFolder asked = new ClubOfFolder();

    @Option(names = "--csv", description = "Print round,court,player_1,player_2,player_3,player_4.")
    private boolean csv;

    @Override
    public Integer call() {
        EventFolder read = Folders.sound(asked.folder, PlainFile.PLAYERS);
        List<PlayerId> here =
                Folders.present(read, asked.club).stream().map(Player::id).toList();
        Optional<Rota> rota = Rota.of(here);
        if (rota.isEmpty()) {
            spec.commandLine()
                    .getErr()
                    .println("A rota takes " + Rota.LEAST + " to " + Rota.MOST + " players, and " + here.size() + " of "
                            + asked.club + " are present. Mark others as present, or divide the squad.");
            return IMPOSSIBLE;
        }
        printed(rota.get()).to(spec.commandLine().getOut(), csv);

        if (!csv) {
            say(here, rota.get());
        }
        return 0;
    }

    private static Printed printed(Rota rota) {
        Printed printed = new Printed("round", "court", "player_1", "player_2", "player_3", "player_4");
        rota.games()
                .forEach(game -> printed.row(
                        game.round(),
                        game.court(),
                        game.one().first(),
                        game.one().second(),
                        game.two().first(),
                        game.two().second()));
        return printed;
    }

    private void say(List<PlayerId> here, Rota rota) {
        PrintWriter err = spec.commandLine().getErr();
        err.println("players 1 and 2 against 3 and 4; " + rota.rounds() + " rounds");
        err.println(new FilmWords(Words.ofCodes(ZoneOffset.UTC)).evenness(rota, here.size()));
    }
}
