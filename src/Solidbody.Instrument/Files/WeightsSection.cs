using Solidbody.Reading;

namespace Solidbody.Instrument.Files;

/// <summary>The tables <c>[weights]</c> and <c>[hanging]</c>. Common practice, no source.</summary>
static class WeightsSection
{
    const double BassTuner = 90, BassBridge = 350, BassPickup = 130, BassString = 45, Kilogram = 1000;

    public static WeightsDefinition Read(TableReader weights, InstrumentBasis basis)
    {
        var or = new WeightsDefinition();
        double Mass(string key, double guitar, string what, double? bass = null) => weights.Mass(key, 0, 3000, basis.IsBass && bass is { } b ? b : guitar * Kilogram, what);
        return new WeightsDefinition
        {
            Tuner = Mass("tuner", or.Tuner, "each", BassTuner),
            Bridge = Mass("bridge", or.Bridge, "with its saddles and screws", BassBridge),
            Pickup = Mass("pickup", or.Pickup, "each", BassPickup),
            String = Mass("string", or.String, "each", BassString),
            Control = Mass("control", or.Control, "potentiometer or switch with its knob, each"),
            Jack = Mass("jack", or.Jack, "with its plate or nut"),
            Cover = Mass("cover", or.Cover, "of the controls, with its screws"),
            StrapButton = Mass("strap_button", or.StrapButton, "with its screw, each"),
            NeckScrews = Mass("neck_screws", or.NeckScrews, "all, with the plate or ferrules under their heads"),
            Rod = Mass("rod", or.Rod, "truss rod"),
            Fret = Mass("fret", or.Fret, "each"),
            Nut = Mass("nut", or.Nut, "of the strings"),
            Finish = Mass("finish", or.Finish, "lacquer or oil, on the body"),
        };
    }

    public static HangingDefinition ReadHanging(TableReader hanging)
    {
        var or = new HangingDefinition();
        return new HangingDefinition
        {
            Strap = hanging.Length("strap", 900, 2000, or.Strap, "length of the strap from button to button, over the shoulder"),
            Grip = hanging.Number("grip", 0, 1, or.Grip, "friction of the strap on the shoulder: 0 slides freely"),
            Angle = hanging.Angle("angle", -30, 60, double.RadiansToDegrees(or.Angle), "of the neck above the level, as it is played"),
        };
    }
}
