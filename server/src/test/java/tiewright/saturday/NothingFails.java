package tiewright.saturday;

import java.util.List;

/** Whatever is offered is answered: no page and no form ends in a failure of the service. */
final class NothingFails implements Promise {
    @Override
    public List<Broken> broken(Moment moment) {
        return moment.sights().stream()
                .filter(sight -> sight.status() >= 500)
                .map(sight -> new Broken(24, sight + " ends in a failure"))
                .toList();
    }
}
