using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Kits;

namespace Gylebook.Recipes.Tests.Kits;

public sealed class NewKitTests
{
    /// <summary>90 to 100 % with a good crush, 80 to 90 % with a coarse one or a short mash (common practice): a new kit stands between the two.</summary>
    [Fact]
    public void A_new_kit_starts_between_a_coarse_crush_and_a_good_one()
    {
        Kit kit = BuiltInKit.New("mine");
        Assert.Equal(("mine", "90 %", 0.9), (kit.Name, kit.Conversion.Text, kit.Conversion.Value.Ratio));
        Assert.Equal((0.8, 1.0), (BuiltInKit.UsualConversion.Low, BuiltInKit.UsualConversion.High));
        Assert.Empty(KitCheck.Findings(kit));
        Assert.Equal(KitFile.Write(kit), KitFile.Write(KitFile.Read(KitFile.Write(kit)).Value!));
    }
}
