package tiewright.plainfiles;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CsvTableTest {
    /** What a spreadsheet would run is a text there, and comes back as it was (OWASP, CSV injection: = + - @). */
    @Test
    void a_text_that_a_spreadsheet_would_reckon_is_written_as_text_and_read_as_it_was() {
        java.util.List<String> texts = java.util.List.of(
                "=1+1", "+49", "@cmd", "-x", "'=1", "''@", "-5", "-", "-0.5", "'tis", "O'Neil", "a=b");
        CsvText written = new CsvText(java.util.List.of("text"));
        texts.forEach(written::row);
        assertThat(written.toString().lines().skip(1))
                .startsWith("'=1+1", "'+49", "'@cmd", "'-x", "''=1", "'''@", "-5", "-", "-0.5");
        assertThat(CsvTable.of("any.csv", written.toString()).rows().stream()
                        .map(row -> row.cell("text").orElseThrow()))
                .containsExactlyElementsOf(texts);
    }

    @TempDir
    private Path folder;

    /** RFC 4180 section 2, rule 7: a double quote inside a quoted field is written twice. */
    @Test
    void reads_a_doubled_quote_as_one() throws IOException {
        assertThat(rows("\"aaa\",\"b\"\"bb\",\"ccc\"\r\n")).containsExactly(List.of("aaa", "b\"bb", "ccc"));
    }

    /** RFC 4180 section 2, rule 6: a quoted field may hold a line break. */
    @Test
    void reads_a_line_break_inside_quotes() throws IOException {
        assertThat(rows("\"aaa\",\"b\r\nbb\",\"ccc\"\r\nzzz,yyy,xxx\r\n"))
                .containsExactly(List.of("aaa", "b\r\nbb", "ccc"), List.of("zzz", "yyy", "xxx"));
    }

    /** RFC 4180 section 2, rules 1 and 2: lines end with CRLF, the last may end without. We also take a bare LF. */
    @Test
    void reads_any_line_end_and_a_last_line_without_one() throws IOException {
        assertThat(rows("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n"))
                .isEqualTo(rows("aaa,bbb,ccc\nzzz,yyy,xxx"))
                .containsExactly(List.of("aaa", "bbb", "ccc"), List.of("zzz", "yyy", "xxx"));
    }

    @Test
    void takes_a_byte_order_mark_for_nothing() throws IOException {
        assertThat(read("\uFEFFone,two,three\n1,2,3\n".getBytes(StandardCharsets.UTF_8))
                        .header())
                .containsExactly("one", "two", "three");
    }

    @Test
    void knows_the_line_on_which_a_row_begins() throws IOException {
        CsvTable table = read("one,two,three\n\"a\nb\nc\",2,3\n\nx,y,z\n".getBytes(StandardCharsets.UTF_8));
        assertThat(table.rows()).extracting(CsvTable.Row::line).containsExactly(2L, 6L);
    }

    @Test
    void tells_a_row_with_too_few_values_by_its_line() throws IOException {
        CsvTable table = read("one,two,three\n1,2,3\n1,2\n".getBytes(StandardCharsets.UTF_8));
        assertThat(table.faults())
                .extracting(FolderFault::toString)
                .containsExactly("some.csv:3: this row has 2 values, the header has 3 columns");
    }

    @Test
    void tells_a_quote_that_never_ends() throws IOException {
        CsvTable table = read("one,two,three\n1,2,3\n1,\"2,3\n".getBytes(StandardCharsets.UTF_8));
        assertThat(table.isWhole()).isFalse();
        assertThat(table.faults())
                .extracting(FolderFault::toString)
                .containsExactly("some.csv:3: a quoted value never ends or is followed by stray text");
    }

    /** RFC 4180, erratum 5714: nothing stands between a closing quote and the line end. */
    @Test
    void tells_text_after_a_closing_quote() throws IOException {
        CsvTable table = read("one,two,three\r\n\"aaa\",\"bbb\",\"ccc\"x\r\n".getBytes(StandardCharsets.UTF_8));
        assertThat(table.isWhole()).isFalse();
        assertThat(table.faults())
                .extracting(FolderFault::toString)
                .containsExactly("some.csv:2: a quoted value never ends or is followed by stray text");
    }

    @Test
    void refuses_what_is_not_utf_8() throws IOException {
        CsvTable table = read(new byte[] {'n', 'a', 'm', 'e', '\n', (byte) 0xE9, '\n'});
        assertThat(table.isWhole()).isFalse();
        assertThat(table.faults())
                .extracting(FolderFault::toString)
                .containsExactly("some.csv:1: this is not UTF-8 text: save the file as UTF-8");
    }

    @Test
    void tells_an_empty_file() throws IOException {
        assertThat(read(new byte[0]).faults())
                .extracting(FolderFault::toString)
                .containsExactly("some.csv:1: the header row is missing");
    }

    private List<List<String>> rows(String body) throws IOException {
        CsvTable table = read(("one,two,three\r\n" + body).getBytes(StandardCharsets.UTF_8));
        assertThat(table.faults()).isEmpty();
        return table.rows().stream().map(CsvTable.Row::inOrder).toList();
    }

    private CsvTable read(byte[] bytes) throws IOException {
        Path file = folder.resolve("some.csv");
        Files.write(file, bytes);
        return CsvTable.read(file);
    }
}
