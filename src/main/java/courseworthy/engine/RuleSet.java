package courseworthy.engine;

import courseworthy.sheet.Stage;
import java.util.List;

/** A set of rules ready to be asked, any number of times and from any thread. */
public interface RuleSet {

    /** Opens one asking; to be closed always. */
    Firing open();

    /** One asking for one call: stages are given in order from layer 0, each rule speaks at most once. */
    interface Firing extends AutoCloseable {

        /**
         * Gives the next stage and returns what rules say because of it. A claim on a topic is said no later than at the stage
         * just before the topic's layer; a measure-valued claim whose measure is derived later waits for it.
         */
        FiringResult fire(Stage stage);

        /** After the last stage: the rules that could not tell. */
        List<UndeterminedRule> undetermined();

        @Override
        void close();
    }
}
