package tiewright.saturday;

import java.util.List;

/** Nothing old looks fresh: a page says how old it is. */
final class PagesSayTheirAge implements Promise {
    @Override
    public List<Broken> broken(Moment moment) {
        return moment.sights().stream()
                .filter(sight -> sight.isRead() && sight.page().selectFirst("main") != null)
                .filter(sight -> !sight.text().contains("as of " + moment.clock()))
                .map(sight -> new Broken(22, sight + " does not say that it is of " + moment.clock()))
                .toList();
    }
}
