package dev.warmlane.examples;

import dev.warmlane.scenario.ScenarioAnswer;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * One question at the terminal.
 *
 * @param id section and key that the answer ends in, such as {@code pool.depth}
 * @param words what is asked
 * @param more what is said to somebody who answers with a question mark
 * @param asked whether it is asked, after what was answered before
 * @param usual what an empty line means; empty where there is no usual answer
 * @param check makes the answer of what was written, or says what is wrong with it
 */
record Question(
        String id, String words, String more, Predicate<Answers> asked, Function<Answers, String> usual, Check check) {

    /** Makes an answer of what was written. */
    interface Check {

        /**
         * The answer.
         *
         * @throws IllegalArgumentException if it cannot be one, with what is wrong and how to mend it
         */
        ScenarioAnswer of(String written, Answers before);
    }

    /** A question for a key of the scenario file, which says itself what it means and what is allowed. */
    static Question key(String id, String words, Function<Answers, String> unit) {
        String section = id.substring(0, id.indexOf('.'));
        String key = id.substring(id.indexOf('.') + 1);
        String more = ScenarioAnswer.meaning(section, key) + "; allowed: " + ScenarioAnswer.allowed(section, key);
        return new Question(
                id,
                words,
                more,
                before -> true,
                before -> "",
                (written, before) -> ScenarioAnswer.of(section, key, written, unit.apply(before)));
    }

    /** The same for a key without a unit. */
    static Question key(String id, String words) {
        return key(id, words, before -> "");
    }

    Question when(Predicate<Answers> condition) {
        return new Question(id, words, more, condition, usual, check);
    }

    Question usually(Function<Answers, String> answer) {
        return new Question(id, words, more, asked, answer, check);
    }

    Question usually(String answer) {
        return usually(before -> answer);
    }

    /** The same with other words for somebody who asks, and an answer of its own beside those of the key. */
    Question or(String word, String moreOfIt) {
        Check keys = check;
        return new Question(
                id,
                words,
                more + "; or \"" + word + "\": " + moreOfIt,
                asked,
                usual,
                (written, before) -> written.strip().equalsIgnoreCase(word)
                        ? new ScenarioAnswer(word, "")
                        : keys.of(written, before));
    }
}
