package tiewright.plainfiles;

import static org.assertj.core.api.Assertions.assertThat;
import static tiewright.plainfiles.PastedList.Holds.BORN;
import static tiewright.plainfiles.PastedList.Holds.CLUB;
import static tiewright.plainfiles.PastedList.Holds.FAMILY_NAME;
import static tiewright.plainfiles.PastedList.Holds.FIRST_NAME;
import static tiewright.plainfiles.PastedList.Holds.NAME;
import static tiewright.plainfiles.PastedList.Holds.NOTHING;
import static tiewright.plainfiles.PastedList.Holds.RANK;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Lists as people copy them. What separates values is that of RFC 4180, of spreadsheets' clipboards (tabs) and of their CSV in
 * countries with a decimal comma (semicolons): common practice. */
class PastedListTest {
    private static PastedList read(String text) {
        return PastedList.read(text, List.of());
    }

    @Test
    void names_alone_are_one_column() {
        PastedList list = read("Ines Roth\nBo Lind\n\n渡辺 Aiko\n");
        assertThat(list.columns()).containsExactly(NAME);
        assertThat(list.rows()).extracting(row -> row.cell(0)).containsExactly("Ines Roth", "Bo Lind", "渡辺 Aiko");
        assertThat(list.rows()).extracting(PastedList.Row::line).containsExactly(1L, 2L, 4L);
    }

    @Test
    void a_family_name_before_a_comma_is_told_from_the_first_name() {
        assertThat(read("Roth, Ines\nLind, Bo\n").columns()).containsExactly(FAMILY_NAME, FIRST_NAME);
        assertThat(read("Ines\tRoth\nBo\tLind\n").columns()).containsExactly(FIRST_NAME, FAMILY_NAME);
    }

    @Test
    void headings_say_what_columns_hold_in_any_order() {
        PastedList list = read("\uFEFFRank;Team;Shirt;Name\n1;Reed;M;Ines\n2;Reed;L;Bo\n");
        assertThat(list.columns()).containsExactly(RANK, CLUB, NOTHING, NAME);
        assertThat(list.rows()).hasSize(2);
    }

    @Test
    void a_file_of_players_keeps_their_codes_apart_from_their_names() {
        assertThat(read("player,club,name,rank\nA1,A,Ines,1\n").columns()).containsExactly(NOTHING, CLUB, NAME, RANK);
    }

    @Test
    void what_stands_in_a_column_says_what_it_holds() {
        PastedList list = read("Reed\tInes\t1\t1999\nReed\tBo\t2\t2011\nReed\tAna\t3\t1980\n");
        assertThat(list.columns()).containsExactly(CLUB, NAME, RANK, BORN);
        assertThat(PastedList.read("Ines\tReed\nBo\tMoss\n", List.of("reed", "MOSS"))
                        .columns())
                .containsExactly(NAME, CLUB);
    }

    @Test
    void a_quotation_mark_without_a_partner_says_its_line_and_loses_no_line_before_it() {
        PastedList list = read("Ines,1\nBo,2\n\"Ana,3\n");
        assertThat(list.broken()).hasValue(3);
        assertThat(list.rows()).hasSize(2);
    }

    @Test
    void a_cell_guarded_against_spreadsheets_is_read_as_it_was() {
        assertThat(read("'=Ines\t1\nBo\t2\n").rows().get(0).cell(0)).isEqualTo("=Ines");
    }
}
