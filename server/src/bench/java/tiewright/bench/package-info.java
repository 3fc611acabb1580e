/**
 * How long things take, measured by hand: plain programs that print what they found, never part of a test run.
 *
 * <p>Start at {@link tiewright.bench.Benchmarks}. They use nothing but the product and the JDK, so that they run from the
 * jar and the compiled tests alone. Each figure stands beside something else done on the same machine in the same run.
 */
@NullMarked
package tiewright.bench;

import org.jspecify.annotations.NullMarked;
