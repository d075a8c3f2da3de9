using Solidbody.Geometry;
using Solidbody.Instrument.Bodies;
using Solidbody.Instrument.Files;

namespace Solidbody.Instrument.Tests.Bodies;

public class StrapButtonTests
{
    [Theory, InlineData("symmetric"), InlineData("offset"), InlineData("single"), InlineData("bass"), InlineData("travel")]
    public void By_default_one_stands_at_the_bass_horn_and_one_at_the_tail(string family)
    {
        var d = InstrumentFile.Read($"units = \"mm\"\nname = \"any\"\nscale = {(family == "bass" ? 863.6 : 635)}\nbody.outline.family = \"{family}\"\n", "any").Good;
        var plan = Designer.Design(d).Part("body").Outline;

        var buttons = StrapButtons.Of(d.Body, plan);

        Assert.Equal(["horn button", "tail button"], buttons.Select(b => b.Definition.Name));
        Assert.All(buttons, b => Assert.True(Math.Abs(plan.SignedDistance(b.Foot.Plan)) < Tolerances.Geometry, $"{b} is off the outline"));
        Assert.All(buttons, b => Assert.True(plan.Contains(b.PilotEnd.Plan), $"{b} leaves the body"));
        Assert.InRange(buttons[1].Foot.X, plan.Bounds.X1 - 0.5, plan.Bounds.X1);
        // A horn's tip is the body's foremost point on its side; the place given is met within a rounding.
        if (d.Body.Outline.Bass is ShoulderDefinition.Horned) Assert.InRange(buttons[0].Foot.Plan.DistanceTo(new(d.Body.StrapButtons[0].X, d.Body.StrapButtons[0].Y)), 0, 0.1);
    }
}
