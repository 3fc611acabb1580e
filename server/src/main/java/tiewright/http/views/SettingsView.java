package tiewright.http.views;

import java.util.List;
import tiewright.http.pieces.FormField;
import tiewright.http.pieces.Refusal;
import tiewright.http.pieces.SelectField;

/**
 * The form of all conditions.
 *
 * @param presets to fill the form from a preset
 * @param base the preset that the values differ from
 * @param notes what goes badly together
 * @param ruling asked once the conditions are frozen, empty before
 */
public record SettingsView(
        Refusal refusal,
        List<String> intro,
        SelectField presets,
        String base,
        List<String> notes,
        List<Group> groups,
        List<FormField> ruling) {
    public SettingsView {
        intro = List.copyOf(intro);
        notes = List.copyOf(notes);
        groups = List.copyOf(groups);
        ruling = List.copyOf(ruling);
    }

    /** The settings under one printed heading. */
    public record Group(String id, String heading, List<FormField> fields) {
        public Group {
            fields = List.copyOf(fields);
        }
    }
}
