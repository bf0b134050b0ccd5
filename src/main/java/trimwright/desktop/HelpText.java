package trimwright.desktop;

/** What the help says. */
final class HelpText {

    /** Keys and what they do, with a tab between them. */
    static final String KEYS = """
            F1 … F6\tthe jobs, from Load to Pool test
            1 2 3 4, F\tside, plan, end and free view; fit the boat into the view
            H\thull as glass, solid or wire
            Ctrl + arrows\tturn the view
            + and -\tnearer and farther

            Drag\tturn the view
            Shift + drag, right button\tmove the view
            Wheel\tnearer and farther at the pointer
            Double click\tfit the boat into the view
            Click\tpick a part
            Drag a picked part\tmove it along one axis, 1 mm a step (Alt: 0.1 mm)
            Violet grips, in Afloat\tlift and tilt a waterline to try; the sliders do the same
            Curves\tclick, or arrows when they have the focus: she is shown at that point

            Arrows\tnudge the picked part fore, aft, up and down; with Shift to port and starboard (up, down); with Alt 0.1 mm a step
            Ctrl+D, Delete\tcopy the picked part; take it out
            Ctrl+Z, Ctrl+Shift+Z\tundo, redo
            Escape\tpick nothing; back to her as loaded; out of a field
            Tab, Shift+Tab\tfrom field to field
            Enter\ta typed number counts; Escape takes it back

            Ctrl+N, Ctrl+O\tnew from a mesh, open
            Ctrl+S, Ctrl+Shift+S\tsave, save as
            Ctrl+P\tsave a picture of the pool
            Ctrl+L, Ctrl+I\tdark or light; inches and ounces or mm and g
            F10, F11, Ctrl+Q\tthe menus, this list, quit""";

    static final String WORDS = """
            B, centre of buoyancy: the middle of the water she displaces.
            G, centre of gravity: the middle of her weight.
            M, metacentre: the point about which she rolls when afloat. GM is how far M stands above G: she stands up only if it is \
            above 0.
            BG: how far B stands above G. Dived only this rights her.
            List is to the side, trim fore and aft.
            Reserve: what she could still carry before all of her is under.
            Buoyancy left, dived: what brings her up when the signal is lost. Below 0 she goes down for good.
            """;

    static final String CAUTIONS = """
            For models only, not for craft that carry people.

            Prove every computed waterline in shallow water, with a line on the boat, before you let her go.

            Lithium batteries burn when wet, crushed or badly charged. Charge them outside the boat, watched, on something that does \
            not burn, and keep to the maker's instructions.

            Lead is poisonous, above all molten or as dust. Wash your hands, keep it from children, and leave casting to those who \
            know how.

            A cylinder, tank or gas bottle under pressure can burst. Use only what is rated for it.

            Open water: never swim after a boat. Mind others, wildlife and local rules.

            Where local rules or licensed practice say more or otherwise, they hold.
            """;

    private HelpText() {}
}
