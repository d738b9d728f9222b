using System.Runtime.InteropServices.JavaScript;
using System.Runtime.Versioning;
using LureSim.Wire;

namespace LureSim.Browser;

/// <summary>What a page's script calls.</summary>
[SupportedOSPlatform("browser")]
public static partial class Engine
{
    /// <summary>Answers a run (<see cref="RunAnswer"/>).</summary>
    /// <param name="json">Run.</param>
    /// <param name="coarse">True: quick.</param>
    [JSExport]
    public static string Run(string json, bool coarse) => RunAnswer.Answer(json, coarse);
}
