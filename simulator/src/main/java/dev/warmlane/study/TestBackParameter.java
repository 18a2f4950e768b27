package dev.warmlane.study;

import dev.warmlane.collector.CertificateCurve;
import dev.warmlane.collector.CollectorArray;
import dev.warmlane.season.Installation;
import java.util.List;
import java.util.stream.Collectors;

/** Whether the wind reached the back of the collectors when their certificate was made. */
record TestBackParameter() implements Parameter {

    @Override
    public String name() {
        return "back on the test stand";
    }

    @Override
    public String why() {
        return "certificates seldom say whether the wind reached the back, and a mat on a roof is charged for one face or"
                + " two accordingly";
    }

    @Override
    public Variation in(Installation installation) {
        List<Boolean> described = installation.arrays().stream()
                .flatMap(array -> array.model().certificate().stream())
                .map(certificate -> certificate.test().backOpen())
                .distinct()
                .toList();
        if (described.isEmpty()) {
            return new Variation.NotHere("no collectors are described by a certificate");
        }
        if (!mayAllBeOpen(installation)) {
            return new Variation.NotHere("the losses of the certificate are too small for a test with an open back");
        }
        return new Variation.Range(
                new Setting.Words(
                        described.stream().map(TestBackParameter::words).collect(Collectors.joining(", "))),
                with(installation, false),
                with(installation, true));
    }

    private static boolean mayAllBeOpen(Installation installation) {
        return installation.arrays().stream()
                .flatMap(array -> array.model().certificate().stream())
                .allMatch(CertificateCurve::mayHaveBeenOpen);
    }

    private static Variation.End with(Installation installation, boolean open) {
        return new Variation.End(
                new Setting.Words(words(open)),
                installation.toBuilder()
                        .arrays(installation.arrays().stream()
                                .map(array -> with(array, open))
                                .toList())
                        .build());
    }

    private static CollectorArray with(CollectorArray array, boolean open) {
        return array.model()
                .match(
                        absorber -> array,
                        certificate -> array.withModel(
                                certificate.withTest(certificate.test().withBackOpen(open))),
                        curve -> array);
    }

    private static String words(boolean open) {
        return open ? "open" : "closed";
    }
}
