package counterbench.cores;

import java.time.Instant;
import java.util.List;

/**
 * What the acts on the rack make of a core, one after the other: the latest tells its state.
 *
 * @param status the state so far
 * @param plugs plugs in it
 * @param draining whether a drain period is open
 * @param drained whether a drain period was ended
 */
record Rack(CoreStatus status, int plugs, boolean draining, boolean drained) {
    /** The state after facts that stand in {@link CoreEvent#ORDER}. */
    static CoreStatus after(List<CoreEvent> ordered) {
        Instant first = ordered.get(0).at();
        Rack rack = new Rack(new CoreStatus(CoreState.REMOVED, first), 0, false, false);
        for (CoreEvent event : ordered) {
            rack = rack.next(event);
        }
        return rack.status;
    }

    private Rack next(CoreEvent event) {
        Instant at = event.at();
        return switch (event.kind()) {
            case DRAIN_BEGUN ->
                    new Rack(new CoreStatus(CoreState.DRAINING, at), plugs, true, drained);
            case DRAIN_ENDED -> draining ? closed(plugs, true, at) : this;
            case PLUGGED, UNPLUGGED -> closed(plugs + CoreHistory.plugsOf(event), drained, at);
            case PACKED -> new Rack(new CoreStatus(CoreState.PACKED, at), plugs, draining, drained);
            default -> this;
        };
    }

    private Rack closed(int plugsIn, boolean drainedNow, Instant at) {
        CoreState open = drainedNow ? CoreState.DRAINED : CoreState.REMOVED;
        CoreStatus now = new CoreStatus(plugsIn > 0 ? CoreState.PLUGGED : open, at);
        return new Rack(now, plugsIn, draining && !drainedNow, drainedNow);
    }
}
