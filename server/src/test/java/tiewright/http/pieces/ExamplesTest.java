package tiewright.http.pieces;

import static org.assertj.core.api.Assertions.assertThat;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The page of examples as it leaves the templates. */
class ExamplesTest {

    private final String page = rendered(Examples.shown());

    static String rendered(Examples examples) {
        var out = new StringOutput();
        TemplateEngine.createPrecompiled(null, ContentType.Html, null, "tiewright.templates")
                .render("examples.jte", examples, out);
        return out.toString();
    }

    @Test
    void is_written_where_a_browser_can_look_at_it() throws IOException {
        Path file = Path.of("target/examples/examples.html");
        Files.createDirectories(file.getParent());
        Files.write(file, page.getBytes(StandardCharsets.UTF_8));
        assertThat(file).isNotEmptyFile();
    }

    @Test
    void has_one_main_heading_and_no_id_twice() {
        assertThat(matches("<h1[ >]")).isEqualTo(1);
        var seen = new HashSet<String>();
        var ids = Pattern.compile(" id=\"([^\"]+)\"").matcher(page);
        while (ids.find()) {
            assertThat(seen.add(ids.group(1)))
                    .as("id used twice: " + ids.group(1))
                    .isTrue();
        }
    }

    @Test
    void names_every_field_and_points_every_description_at_something() {
        var described = Pattern.compile(" (?:for|aria-describedby|aria-labelledby)=\"([^\"]+)\"")
                .matcher(page);
        int found = 0;
        while (described.find()) {
            for (String id : described.group(1).split(" ")) {
                assertThat(page).contains(" id=\"" + id + "\"");
                found++;
            }
        }
        assertThat(found).isGreaterThan(8);
    }

    @Test
    void carries_no_inline_style_and_no_inline_script() {
        assertThat(page).doesNotContain(" style=", "<style", "onclick=", "javascript:");
        assertThat(Pattern.compile("<script(?![^>]* src=)").matcher(page).find())
                .isFalse();
    }

    @Test
    void escapes_what_people_type() {
        var evil = TextField.of("name", TextField.Kind.LINE, "<b>Name</b>", "\"><script>alert(1)</script>");
        var out = new StringOutput();
        TemplateEngine.createPrecompiled(null, ContentType.Html, null, "tiewright.templates")
                .render("pieces/textField.jte", evil, out);
        assertThat(out.toString())
                .doesNotContain("<script>", "<b>")
                .contains("&lt;b&gt;Name&lt;/b&gt;", "value=\"&#34;>");
    }

    @Test
    void says_every_state_as_a_word_and_a_shape() {
        for (Mark mark : Mark.values()) {
            var out = new StringOutput();
            TemplateEngine.createPrecompiled(null, ContentType.Html, null, "tiewright.templates")
                    .render("pieces/state.jte", new State(mark, "Word"), out);
            assertThat(out.toString()).contains("Word");
            // final and old carry their shape as a rule and a strike in the stylesheet
            boolean drawn = mark != Mark.PLAIN && mark != Mark.FINAL && mark != Mark.OLD;
            assertThat(out.toString().contains("<svg")).as(mark.code()).isEqualTo(drawn);
        }
    }

    private int matches(String regex) {
        return (int) Pattern.compile(regex).matcher(page).results().count();
    }
}
