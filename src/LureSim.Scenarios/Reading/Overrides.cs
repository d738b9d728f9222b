namespace LureSim.Scenarios.Reading;

/// <summary>Overrides of the form <c>key=value</c>, as <c>--set</c> gives them.</summary>
internal static class Overrides
{
    /// <summary>Applies all of them as one layer.</summary>
    public static void Apply(IReadOnlyList<string> overrides, LayerReader layers, FaultList faults, int layer)
    {
        foreach (string text in overrides)
        {
            Source source = layers.NewSource($"--set {text}", isOverride: true);
            int equals = text.IndexOf('=', StringComparison.Ordinal);
            if (equals < 1)
            {
                faults.Add(new(source), "", "key=value is due, for example --set \"retrieve.cadence=2 /s\"");
                continue;
            }

            if (Value(text[(equals + 1)..].Trim(), source, faults) is Node value)
            {
                layers.ApplyOverride(text[..equals].Trim(), value, layer);
            }
        }
    }

    // A value is the text a file would hold between quotes; lists, tables and quoted texts may be written as TOML.
    private static Node? Value(string text, Source source, FaultList faults)
    {
        if (text is not ['[' or '{' or '"', ..])
        {
            return new(NodeKind.Text, new(source), text);
        }

        var inner = new FaultList();
        if (TomlTree.Read($"v = {text}", source, inner)?.Find("v") is Node value)
        {
            faults.AddRange(inner);
            return value;
        }

        faults.Add(new(source), "", "the value cannot be read; a list is written [{ x = \"1 mm\" }], a text in quotes");
        return null;
    }
}
