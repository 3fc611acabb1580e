package tiewright.http.views;

import java.util.List;
import tiewright.http.pieces.Button;
import tiewright.http.pieces.SelectField;
import tiewright.http.pieces.TextField;

/**
 * A small form that does one thing.
 *
 * @param id unique on the page
 * @param words what it does and what to mind, may be empty
 * @param hidden values sent along
 */
public record ActionForm(
    String id, String path, String title, String words, List<CardFormView.Hidden> hidden, List<SelectField> selects,
    List<TextField> fields, Button button) {

  public static ActionForm of(String id, String path, String title, Button button) {
    return new ActionForm(id, path, title, "", List.of(), List.of(), List.of(), button);
  }

  public ActionForm saying(String newWords) {
    return new ActionForm(id, path, title, newWords, hidden, selects, fields, button);
  }

  public ActionForm sending(String name, String value) {
    List<CardFormView.Hidden> more = new java.util.ArrayList<>(hidden);
    more.add(new CardFormView.Hidden(name, value));
    return new ActionForm(id, path, title, words, List.copyOf(more), selects, fields, button);
  }

  public ActionForm choosing(SelectField... more) {
    List<SelectField> all = new java.util.ArrayList<>(selects);
    all.addAll(List.of(more));
    return new ActionForm(id, path, title, words, hidden, List.copyOf(all), fields, button);
  }

  public ActionForm asking(TextField... more) {
    List<TextField> all = new java.util.ArrayList<>(fields);
    all.addAll(List.of(more));
    return new ActionForm(id, path, title, words, hidden, selects, List.copyOf(all), button);
  }
}
