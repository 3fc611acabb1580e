package tiewright.http.rulings;

import java.util.List;
import java.util.Optional;
import tiewright.desk.PostNotice;
import tiewright.event.Tie;
import tiewright.event.TieId;
import tiewright.http.pieces.Button;
import tiewright.http.pieces.Option;
import tiewright.http.pieces.TextField;
import tiewright.http.views.WorkView;
import tiewright.http.visit.BackLinks;
import tiewright.http.visit.Door;
import tiewright.http.visit.Fields;
import tiewright.http.visit.Form;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Screen;
import tiewright.http.visit.TieOrder;
import tiewright.http.visit.TieViews;
import tiewright.http.visit.Tried;
import tiewright.http.visit.Visit;

/** Telling everybody something, numbered. */
final class PostNoticePage implements Page {
    private static final String HERE = "/organiser/notices";
    private static final String FORM = "notice";

    @Override
    public void at(Routes routes) {
        routes.get(Door.OFFICIALS, HERE, visit -> visit.show(screen(visit, Tried.NOTHING)));
        routes.post(Door.OFFICIALS, HERE, PostNoticePage::post);
    }

    private static void post(Visit visit) {
        Form form = visit.form();
        String text = form.mustText("text");
        Optional<TieId> tie = form.read("tie", "form.not-a-tie", TieId::of);
        String reason = form.mustText("reason");
        visit.attempt(
                form,
                () -> new PostNotice(text, tie, form.maybe("before"), form.maybe("after"), reason),
                "/notices",
                tried -> screen(visit, tried));
    }

    private static Screen screen(Visit visit, Tried tried) {
        Fields fields = Fields.of(FORM, tried);
        TieViews views = new TieViews(visit.event());
        List<Option> ties = TieOrder.sorted(List.copyOf(visit.event().ties())).stream()
                .map((Tie tie) -> Option.of(tie.id().code(), tie.id() + ": " + views.title(tie), false))
                .toList();
        WorkView.WorkForm form = new WorkView.WorkForm(
                FORM,
                HERE,
                List.of(
                        fields.line("text", "What it is about, in one line", "")
                                .withMaxLength(200)
                                .mustBeFilled(),
                        fields.select("tie", "The tie it changes", "No tie in particular", "", ties),
                        fields.line("before", "What no longer holds", "")
                                .withHint("Shown struck through. Empty if nothing was published before."),
                        fields.line("after", "What holds now", ""),
                        fields.text("reason", TextField.Kind.LONG, "Why", "").mustBeFilled()),
                List.of(Button.main("Post this notice")));
        return Screen.of(
                "work",
                "Post a notice",
                new WorkView(
                        tried.refusal(),
                        BackLinks.home(visit),
                        List.of(
                                "A notice gets the next number and stands on the public page of notices at once. Nothing is ever taken off it; a mistake is put"
                                        + " right by the next notice. A changed start or court is entered under Starts and courts, which posts its own."),
                        List.of(WorkView.Section.of(FORM, "").with(form))));
    }
}
