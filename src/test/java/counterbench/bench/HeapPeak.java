package counterbench.bench;

import com.sun.management.GarbageCollectionNotificationInfo;
import com.sun.management.GarbageCollectorMXBean;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryUsage;
import java.util.Set;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.Collectors;
import javax.management.Notification;
import javax.management.NotificationEmitter;
import javax.management.openmbean.CompositeData;

/**
 * The most heap that was still in use after a collection, since it began to watch: what the work
 * needs at the same time, without what merely waits to be collected.
 */
final class HeapPeak {
    private static final Set<String> HEAP =
            ManagementFactory.getMemoryPoolMXBeans().stream()
                    .filter(p -> p.getType() == java.lang.management.MemoryType.HEAP)
                    .map(p -> p.getName())
                    .collect(Collectors.toSet());

    private final AtomicLong peak = new AtomicLong();

    HeapPeak() {
        for (var collector : ManagementFactory.getPlatformMXBeans(GarbageCollectorMXBean.class)) {
            ((NotificationEmitter) collector)
                    .addNotificationListener((n, handback) -> take(n), null, null);
        }
    }

    private void take(Notification notification) {
        var collection =
                GarbageCollectionNotificationInfo.from((CompositeData) notification.getUserData());
        long used =
                collection.getGcInfo().getMemoryUsageAfterGc().entrySet().stream()
                        .filter(pool -> HEAP.contains(pool.getKey()))
                        .map(pool -> pool.getValue())
                        .mapToLong(MemoryUsage::getUsed)
                        .sum();
        peak.accumulateAndGet(used, Math::max);
    }

    /** The peak so far; 0 if nothing was collected. */
    long megabytes() {
        return peak.get() >> 20;
    }
}
