package tiewright.search;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;

/** A switch that another thread can press, and where it reads how far the search is. Stopped, a search gives the best it has found. */
public final class Stop {
    private final List<Runnable> listeners = new CopyOnWriteArrayList<>();
    private volatile boolean pressed;
    private volatile int steps;

    public void press() {
        pressed = true;
        listeners.forEach(Runnable::run);
    }

    public boolean isPressed() {
        return pressed;
    }

    /** Answers tried so far. */
    public int stepsDone() {
        return steps;
    }

    void reached(int step) {
        steps = step;
    }

    /** What is to be done once somebody presses; at once if somebody has. */
    public void onPress(Runnable listener) {
        listeners.add(listener);
        if (pressed) {
            listener.run();
        }
    }

    void forget(Runnable listener) {
        listeners.remove(listener);
    }
}
