namespace LureSim.Scenarios;

/// <summary>One thing that is wrong (or worth a note) in a scenario.</summary>
/// <param name="Place"><c>file(line,column)</c>, or <c>--set key=value</c>.</param>
/// <param name="Key">Full key, or empty where the file as a whole is at fault.</param>
/// <param name="Message">What is wrong; what is allowed; nearest known key.</param>
public sealed record ScenarioFault(string Place, string Key, string Message)
{
    /// <summary>The line as printed.</summary>
    public override string ToString() => Key.Length == 0 ? $"{Place}: {Message}" : $"{Place}: {Key}: {Message}";
}
