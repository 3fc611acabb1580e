package tiewright.saturday;

import java.util.List;
import org.jsoup.nodes.Element;
import tiewright.event.OfficialFact;
import tiewright.event.PlayerId;

/** Whether two players of one name are two people is not asked again once it was answered. */
final class AskedOnce implements Promise {
    @Override
    public List<Broken> broken(Moment moment) {
        List<OfficialFact.TwoPeople> answered = moment.event().disputes().namesakes();
        if (answered.isEmpty()) {
            return List.of();
        }
        moment.met(Looked.TWO_PEOPLE_ANSWERED);
        return moment.fresh().stream()
                .flatMap(sight -> sight.forms().stream()
                        .filter(form -> sight.action(form).equals("/organiser/two-people"))
                        .filter(form ->
                                answered.stream().anyMatch(said -> said.isOf(named(form, "one"), named(form, "other"))))
                        .map(form -> new Broken(
                                19,
                                sight + " asks again whether " + named(form, "one") + " and " + named(form, "other")
                                        + " are two people")))
                .toList();
    }

    private static PlayerId named(Element form, String field) {
        return PlayerId.of(form.select("input[name=" + field + "]").attr("value"));
    }
}
