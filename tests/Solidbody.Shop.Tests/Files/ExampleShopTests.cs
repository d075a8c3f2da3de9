using Solidbody.Geometry;
using Solidbody.Shop.Files;

namespace Solidbody.Shop.Tests.Files;

public class ExampleShopTests
{
    [Fact]
    public void The_schools_shop_is_what_its_file_says()
    {
        var result = ShopFile.Read(Repository.ReadExample("school-shop.toml"), "school-shop.toml");

        Assert.Empty(result.Mistakes);
        var shop = result.Good;
        Assert.Equal((600.0, 600.0, 110.0, 640.0), (shop.Machine.TravelX, shop.Machine.TravelY, shop.Machine.TravelZ, shop.Machine.BedX));
        Assert.Equal((400.0, 1500.0), (shop.Machine.SpindleSpeedMost, shop.Machine.SpindlePower)); // 24,000 a minute
        Assert.Equal(4000.0 / 60, shop.Machine.FeedMostXY);
        Assert.Equal(13, shop.Cutters.Length);
        Assert.Equal((CutterKind.Straight, 0.5842), (shop.Cutters.Single(c => c.Name == "F058").Kind, shop.Cutters.Single(c => c.Name == "F058").Diameter));
        Assert.Equal(118 * Math.PI / 180, shop.Cutters.Single(c => c.Name == "D8").Angle);
    }
}
