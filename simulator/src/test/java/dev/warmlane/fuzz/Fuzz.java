package dev.warmlane.fuzz;

import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.fail;

import java.time.Duration;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import java.util.stream.IntStream;

/**
 * Many cases from fixed seeds. The ordinary build tries 2,000, shared among three tests; {@code -Dfuzz.cases=100000}
 * tries more of them, and the first 2,000 again. A case that fails names its seed; {@code -Dfuzz.seed=17} tries that one
 * alone.
 */
final class Fuzz {

    private static final int USUAL_CASES = 2000;

    /** A case that has not ended by then does not end, and is left: an ordinary one takes a fraction of a second. */
    private static final Duration ENDLESS = Duration.ofMinutes(2);

    /** What one case does; throws where something is not as it should be. */
    interface Case {
        /** Tries the case of a source of chance. */
        void run(Random chance) throws Exception;
    }

    private Fuzz() {}

    /**
     * Tries the share of a test in all cases, on all cores.
     *
     * @param test the test's class, to say how a case is tried alone
     * @param permille its share of all cases, in thousandths
     * @param one what a case does
     */
    static void run(Class<?> test, int permille, Case one) {
        String only = System.getProperty("fuzz.seed");
        long cases = (long) Integer.getInteger("fuzz.cases", USUAL_CASES) * permille / 1000;
        List<String> failures = only == null
                ? IntStream.range(0, (int) cases)
                        .parallel()
                        .mapToObj(seed -> failure(seed, one))
                        .filter(text -> !text.isEmpty())
                        .toList()
                : List.of(failure(Integer.parseInt(only), one));
        if (failures.stream().anyMatch(text -> !text.isEmpty())) {
            fail(failures.size() + " of " + (only == null ? cases : 1)
                    + " cases failed; to try one alone: mvn -pl simulator"
                    + " test -Dtest=" + test.getSimpleName() + " -Dfuzz.seed=SEED\n"
                    + String.join("\n", failures.subList(0, Math.min(25, failures.size()))));
        }
    }

    /** What is wrong with a case; empty where nothing is. Errors count: running out of memory or stack is a failure. */
    private static String failure(int seed, Case one) {
        Random chance = new Random(0x9E3779B97F4A7C15L * (seed + 1L));
        try {
            assertTimeoutPreemptively(ENDLESS, () -> one.run(chance));
            return "";
        } catch (Throwable thrown) {
            String message = Objects.toString(thrown.getMessage(), "");
            StackTraceElement[] trace = thrown.getStackTrace();
            return "seed " + seed + ": " + thrown.getClass().getName() + ": "
                    + message.substring(0, Math.min(600, message.length())).strip()
                    + (thrown instanceof AssertionError || trace.length == 0 ? "" : " at " + trace[0]);
        }
    }

    /** A number of a range. */
    static double within(Random chance, double low, double high) {
        return low + chance.nextDouble() * (high - low);
    }

    /** One of some things. */
    @SafeVarargs
    static <T> T oneOf(Random chance, T... things) {
        return things[chance.nextInt(things.length)];
    }
}
