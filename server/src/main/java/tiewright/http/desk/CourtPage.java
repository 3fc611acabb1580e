package tiewright.http.desk;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import tiewright.event.Court;
import tiewright.event.RubberNo;
import tiewright.event.Tie;
import tiewright.event.VisibleEvent;
import tiewright.http.pieces.Button;
import tiewright.http.pieces.HiddenField;
import tiewright.http.pieces.NavLink;
import tiewright.http.pieces.Refusal;
import tiewright.http.pieces.TextField;
import tiewright.http.views.DeskView.Press;
import tiewright.http.views.WorkView;
import tiewright.http.views.WorkView.Section;
import tiewright.http.views.WorkView.WorkForm;
import tiewright.http.visit.Door;
import tiewright.http.visit.NotFound;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Screen;
import tiewright.http.visit.TieViews;
import tiewright.http.visit.Visit;

/** One court at the desk: free it, or call to it whatever waits. */
final class CourtPage implements Page {
    private static final String BELOW = "/desk/court/";

    static String of(String court) {
        return BELOW + URLEncoder.encode(court, StandardCharsets.UTF_8).replace("+", "%20");
    }

    @Override
    public void at(Routes routes) {
        routes.get(Door.DESK, BELOW + "{court}", visit -> visit.show(screen(visit)));
    }

    private static Screen screen(Visit visit) {
        String name = visit.path("court");
        Court court = visit.event().courts().stream()
                .filter(one -> one.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new NotFound(visit.say("page-desk.there-is-no-court", "court", name)));
        List<Section> sections = new ArrayList<>(on(visit, court));
        sections.addAll(calls(visit, court));
        if (sections.isEmpty()) {
            sections.add(Section.of("nothing", "", visit.say("page-desk.nothing-waits-to-be-called")));
        }
        return Screen.of(
                "work",
                visit.say("page-desk.court", "court", name),
                new WorkView(
                        Refusal.NONE,
                        new NavLink(DeskPage.HERE, visit.say("page-desk.back-to-the-desk"), false),
                        List.of(),
                        sections));
    }

    /** What is on it, and the way to free it: the call is taken back, and both stay in the log. */
    private static List<Section> on(Visit visit, Court court) {
        VisibleEvent event = visit.event();
        CourtWords words = new CourtWords(event, new TieViews(event));
        List<Section> sections = new ArrayList<>();
        for (Tie tie : event.ties()) {
            List<RubberNo> left = event.progress(tie).left();
            tie.calls().forEach((rubber, call) -> {
                if (call.court().equals(court.name()) && left.contains(rubber) && !event.isGone(tie)) {
                    sections.add(
                            Section.of("on-" + rubber, words.rubber(tie, rubber).what())
                                    .saying(words.rubber(tie, rubber).who())
                                    .with(free(visit, tie, rubber)));
                }
            });
        }
        return sections;
    }

    private static WorkForm free(Visit visit, Tie tie, RubberNo rubber) {
        return new WorkForm(
                "free",
                "/desk/tie/" + tie.id() + "/call-back",
                List.of(
                        new HiddenField("rubber", rubber.toString()),
                        TextField.of(
                                        "call-back-reason",
                                        TextField.Kind.LINE,
                                        visit.say("page-desk.why"),
                                        visit.say("page-desk.called-by-mistake"))
                                .mustBeFilled()
                                .withMaxLength(300)),
                List.of(Button.other(visit.say("page-desk.free-this-court"))));
    }

    private static List<Section> calls(Visit visit, Court court) {
        if (!court.usable()) {
            return List.of();
        }
        Callables callables = new Callables(visit);
        return callables.all().stream()
                .map(one -> {
                    Press press = callables.press(one, court.name());
                    Button call =
                            Button.main(visit.say("page-desk.call-to", "rubber", one.rubber(), "court", court.name()));
                    return Section.of("call-" + one.tie().id() + "-" + one.rubber(), press.whole())
                            .with(new WorkForm("call", press.path(), List.copyOf(press.sent()), List.of(call)));
                })
                .toList();
    }
}
