using Vessel.Design;

namespace Vessel.Export.Summary;

/// <summary>summary.json's <c>shop</c>: every figure of the shop that the estimates rest on.</summary>
internal static class ShopJson
{
    public static void Write(Shop shop, SummaryWriter json)
    {
        json.Put("name", shop.Name);
        json.List("figures", shop.Figures, figure => json.Object(() =>
        {
            json.Put("key", figure.Path);
            json.Put("value", figure.Value);
            json.Put("source", figure.Source);
        }));
    }
}
