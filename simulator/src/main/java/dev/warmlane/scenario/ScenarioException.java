package dev.warmlane.scenario;

import java.util.List;
import java.util.stream.Collectors;

/** A scenario file cannot be used; holds everything that was found wrong with it, in the order of the file. */
public final class ScenarioException extends RuntimeException {

    private static final long serialVersionUID = 1;

    private final transient List<Finding> findings;

    /** From at least one finding. */
    public ScenarioException(List<Finding> findings) {
        super(findings.stream().map(Finding::toString).collect(Collectors.joining(System.lineSeparator())));
        this.findings = List.copyOf(findings);
    }

    /** Everything that was found wrong; the message of this exception is all of it, one line each. */
    public List<Finding> findings() {
        return findings;
    }
}
