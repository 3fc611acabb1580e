package tiewright.http.rulings;

import java.util.List;
import java.util.Optional;
import tiewright.desk.PostNotice;
import tiewright.event.Tie;
import tiewright.event.TieId;
import tiewright.http.pieces.Button;
import tiewright.http.pieces.FormField;
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
        WorkView.WorkForm form = new WorkView.WorkForm(
                FORM,
                HERE,
                asked(visit, Fields.of(FORM, tried)),
                List.of(Button.main(visit.say("page-rulings.post-this-notice"))));
        return Screen.of(
                "work",
                visit.say("page-rulings.post-a-notice"),
                new WorkView(
                        tried.refusal(),
                        BackLinks.home(visit),
                        List.of(visit.say("page-rulings.a-notice-gets-the-next")),
                        List.of(WorkView.Section.of(FORM, "").with(form))));
    }

    private static List<FormField> asked(Visit visit, Fields fields) {
        TieViews views = new TieViews(visit.event());
        List<Option> ties = TieOrder.sorted(List.copyOf(visit.event().ties())).stream()
                .map((Tie tie) -> Option.of(tie.id().code(), tie.id() + ": " + views.title(tie), false))
                .toList();
        return List.of(
                fields.line("text", visit.say("page-rulings.what-it-is-about-in"), "")
                        .withMaxLength(200)
                        .mustBeFilled(),
                fields.select(
                        "tie",
                        visit.say("page-rulings.the-tie-it-changes"),
                        visit.say("page-rulings.no-tie-in-particular"),
                        "",
                        ties),
                fields.line("before", visit.say("page-rulings.what-no-longer-holds"), "")
                        .withHint(visit.say("page-rulings.shown-struck-through-empty-if")),
                fields.line("after", visit.say("page-rulings.what-holds-now"), ""),
                fields.text("reason", TextField.Kind.LONG, visit.say("page-rulings.why"), "")
                        .mustBeFilled());
    }
}
