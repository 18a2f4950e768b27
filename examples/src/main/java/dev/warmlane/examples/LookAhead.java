package dev.warmlane.examples;

import dev.warmlane.files.Printable;
import dev.warmlane.scenario.Finding;
import dev.warmlane.scenario.ScenarioException;
import dev.warmlane.scenario.ScenarioReader;
import java.io.PrintWriter;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Reads after every answer the scenario that there would be if all further ones were the usual, and tells at once what is
 * allowed but hardly meant: collectors that the roof has no room for are told with their area and not at the end.
 */
final class LookAhead implements Interview.Look {

    private final List<Question> questions;
    private final PrintWriter out;
    private Set<String> told = Set.of();

    LookAhead(List<Question> questions, PrintWriter out) {
        this.questions = questions;
        this.out = out;
    }

    @Override
    public void after(int at, Answers answers) {
        if (!answers.has(Questions.WEATHER)) {
            return; // without a weather file there is no scenario yet
        }
        Answers whole = answers.copy();
        questions.subList(at + 1, questions.size()).forEach(question -> question.assume(whole));
        Set<String> found = new HashSet<>();
        try {
            for (Finding warning : ScenarioReader.parse(DescribedScenario.of(whole), answers.file())
                    .warnings()) {
                found.add(warning.message());
                if (!told.contains(warning.message())) {
                    out.println("  Look at this: " + Printable.line(warning.told()));
                }
            }
        } catch (ScenarioException wrong) {
            throw new IllegalArgumentException(
                    wrong.findings().stream().map(Finding::told).collect(Collectors.joining("\n")), wrong);
        }
        told = found;
    }
}
