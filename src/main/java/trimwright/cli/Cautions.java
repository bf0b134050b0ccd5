package trimwright.cli;

/** What can hurt, said shortly where it fits. */
final class Cautions {

    /** For the end of a help text. */
    static final String HELP =
            "For models without people aboard; not for craft that carry people. Lead, lithium batteries,"
                    + " compressed gas and open water can hurt: follow the makers' instructions and your local rules.";

    /** For the end of an answer about floating. */
    static final String AFLOAT =
            "A computed waterline: prove it in shallow water, with a line on the boat and the batteries"
                    + " sealed in. Not for craft that carry people.";

    /** For the end of an answer about diving. */
    static final String DIVED =
            "A computed dive: try it in shallow water first, with a line on the boat, somebody watching, and a way to bring her"
                    + " up that needs no signal. Water in a cylinder with lithium batteries can end in fire; gas under pressure can"
                    + " burst what holds it. Keep to the makers' instructions and your local rules. Not for craft that carry people.";

    /** For the end of a ballast plan. */
    static final String BALLAST =
            "A computed plan: fit it in steps and prove it in shallow water, with a line on the boat. Lead is poisonous, above"
                    + " all molten or as dust; wash your hands, and leave casting to those who know how. Not for craft that"
                    + " carry people.";

    private Cautions() {}
}
