package tiewright.saturday;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Nobody who is marked as hurt on the page is sealed by a form that did not say that it was asked. */
final class HurtIsAsked implements Promise {
    @Override
    public List<Broken> broken(Moment moment) {
        List<Broken> broken = new ArrayList<>();
        for (Log.Sent sent : moment.log().sent()) {
            List<String> hurt = moment.hurt().stream().map(Object::toString).toList();
            boolean seals = sent.isDone()
                    && sent.action().matches("/captain/(sheet|decider)/[^/]+")
                    && sent.fields().stream()
                            .anyMatch(field -> field.getKey().equals("step")
                                    && field.getValue().equals("seal"));
            boolean asked =
                    sent.fields().stream().anyMatch(field -> field.getKey().equals("hurt-asked"));
            String named = sent.fields().stream()
                    .filter(field -> field.getKey().startsWith("sheet-") && hurt.contains(field.getValue()))
                    .map(java.util.Map.Entry::getValue)
                    .collect(Collectors.joining(", "));
            if (seals && !named.isEmpty()) {
                moment.met(Looked.SEALED_WITH_SOMEBODY_HURT);
            }
            if (seals && !asked && !named.isEmpty()) {
                broken.add(new Broken(20, sent + " seals " + named + ", marked as hurt, without a word"));
            }
        }
        return broken;
    }
}
