using Gylebook.Science.Data;

namespace Gylebook.Science.Tests.Data;

public class CsvTableTests
{
    private const string Text = """"
        # What it is
        # Source: nowhere
        id,name,value
        a,"one, two",1.5

        b,"say ""when""",
        """";

    [Fact]
    public void Head_columns_and_rows_are_read()
    {
        var table = CsvTable.Parse("t.csv", Text);
        Assert.Equal(["What it is", "Source: nowhere"], table.Head);
        Assert.Equal(["id", "name", "value"], table.Columns);
        Assert.Equal(["one, two", "say \"when\""], table.Rows.Select(row => row.Text("name")));
        Assert.Equal(1.5, table.Rows[0].Number("value"));
        Assert.Null(table.Rows[1].NumberOrNull("value"));
        Assert.Equal(6, table.Rows[1].Line);
    }

    [Theory]
    [InlineData("id,value\na,1,2", "t.csv, line 2: 3 fields, but there are 2 columns.")]
    [InlineData("id,value\na,\"1", "t.csv, line 2, field 2: a quote is not closed.")]
    [InlineData("# head only", "t.csv: no line of column names.")]
    public void Text_that_is_no_table_names_file_and_line(string text, string message) =>
        Assert.Equal(message, Assert.Throws<InvalidDataException>(() => CsvTable.Parse("t.csv", text)).Message);

    [Theory]
    [InlineData("x", "t.csv, line 3, column value: is not a number: x.")]
    [InlineData("NaN", "t.csv, line 3, column value: is not a number: NaN.")]
    [InlineData("1e999", "t.csv, line 3, column value: is not a number: 1e999.")]
    [InlineData("", "t.csv, line 3, column value: is empty, a number was expected.")]
    public void A_field_that_is_no_number_names_file_row_and_column(string field, string message)
    {
        var table = CsvTable.Parse("t.csv", $"# head\nid,value\na,{field}");
        Assert.Equal(message, Assert.Throws<InvalidDataException>(() => table.Rows[0].Number("value")).Message);
    }

    [Fact]
    public void A_column_that_is_not_there_is_named() =>
        Assert.Equal("t.csv: no column colour.",
            Assert.Throws<InvalidDataException>(() => CsvTable.Parse("t.csv", Text).Rows[0].Text("colour")).Message);
}
