package tiewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Commands pointed at what they cannot use: a sentence and exit status 2, never a stack trace. */
class WorstFoldersTest {
    @TempDir
    private Path folder;

    private static void saysSo(Commands.Ran ran, String... words) {
        assertThat(ran.status()).as(ran.err()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).contains(words).doesNotContain("\tat ");
    }

    @Test
    void backs_up_and_exports_no_folder_that_holds_no_event() throws Exception {
        Commands.event(folder);
        saysSo(Commands.run("backup", folder.resolve("b.zip"), "--data", folder), "no event in the folder");
        saysSo(Commands.run("export", folder.resolve("out"), "--data", folder), "no event in the folder");
        assertThat(Files.exists(folder.resolve("tiewright.mv.db"))).isFalse();
        assertThat(Files.exists(folder.resolve("b.zip"))).isFalse();
    }

    @Test
    void a_file_is_no_data_folder_to_serve() throws Exception {
        Path file = Files.writeString(folder.resolve("file"), "x");
        saysSo(Commands.run("serve", "--data", file, "--port", 0), "cannot be made or used");
    }

    @Test
    void says_when_it_cannot_listen() throws Exception {
        try (ServerSocket taken = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            saysSo(
                    Commands.run("serve", "--data", folder.resolve("d"), "--port", taken.getLocalPort()),
                    "another program uses the port");
        }
        saysSo(
                Commands.run("serve", "--data", folder.resolve("d"), "--port", 0, "--host", "999.1.1.1"),
                "not one of this machine");
    }

    @Test
    void a_damaged_note_of_a_running_service_does_not_stop_a_backup() throws Exception {
        Path data = folder.resolve("data");
        Path demo = Commands.event(Files.createDirectory(folder.resolve("event")));
        Commands.write(demo, "clubs.csv", "club,name", "N,North", "S,South");
        Commands.write(demo, "players.csv", "player,club,name", "N1,N,One");
        assertThat(Commands.run("import", demo, "--data", data).err()).isEmpty();
        Files.writeString(data.resolve("running.json"), "garbage");
        assertThat(Commands.run("backup", folder.resolve("b.zip"), "--data", data)
                        .status())
                .isZero();
        assertThat(Files.size(folder.resolve("b.zip"))).isPositive();
    }

    @Test
    void a_file_that_cannot_be_written_is_told_in_a_sentence() throws Exception {
        Path file = Files.writeString(folder.resolve("file"), "x");
        Path demo = Commands.event(Files.createDirectory(folder.resolve("event")));
        Commands.write(demo, "clubs.csv", "club,name", "N,North", "S,South");
        Commands.write(demo, "players.csv", "player,club,name", "N1,N,One");
        Path data = folder.resolve("data");
        assertThat(Commands.run("import", demo, "--data", data).err()).isEmpty();
        saysSo(Commands.run("export", file.resolve("out"), "--data", data), "cannot be used");
    }
}
