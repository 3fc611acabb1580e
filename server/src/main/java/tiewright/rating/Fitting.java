package tiewright.rating;

/** Where strengths come from: {@link Rating#fit(Prior, Evidence)}, or whoever remembers what that said of the same. */
@FunctionalInterface
public interface Fitting {
    Strengths fit(Prior prior, Evidence evidence);
}
