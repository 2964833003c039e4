"""The OpenAPI description: valid, complete, and true of the answers."""

import pytest
from jsonschema import Draft202012Validator
from openapi_spec_validator import OpenAPIV31SpecValidator

from jointwise.calc.cell.requests import CellRequest
from jointwise.calc.matrix.requests import MatrixRequest
from jointwise.calc.operations import OPERATIONS


@pytest.fixture(scope="module")
def description(client):
    """The description as served."""
    return client.get("openapi.json").json()


def conforms(description, schema, value):
    """Whether a value is as one of the described schemas says."""
    whole = {"$ref": f"#/components/schemas/{schema}", "components": description["components"]}
    return Draft202012Validator(whole).is_valid(value)


def test_description_is_valid_openapi_3_1(description):
    """The description says that it is OpenAPI 3.1, and is."""
    assert description["openapi"].startswith("3.1.")
    assert list(OpenAPIV31SpecValidator(description).iter_errors()) == []


@pytest.mark.parametrize("operation", OPERATIONS)
def test_every_operation_is_described(description, operation):
    """Each operation has its request, result and problems by POST, and by GET where a query can ask it."""
    path = description["paths"][f"/api/v1/{operation}"]

    body = path["post"]["requestBody"]["content"]["application/json"]["schema"]["$ref"]
    assert body.endswith(OPERATIONS[operation].request.__name__)
    assert {"200", "400", "413", "415", "500"} <= path["post"]["responses"].keys()
    assert ("get" in path) == OPERATIONS[operation].cacheable
    assert not OPERATIONS[operation].cacheable or {"200", "304", "400", "500"} <= path["get"]["responses"].keys()


@pytest.mark.parametrize("request_", [MatrixRequest, CellRequest])
def test_every_field_is_a_described_parameter(description, request_):
    """Each field of a request is a parameter of its GET, with words and, but for choices, a range or type."""
    operation = request_.__name__.removesuffix("Request").lower()
    parameters = description["paths"][f"/api/v1/{operation}"]["get"]["parameters"]

    assert tuple(parameter["name"] for parameter in parameters) == request_.__struct_fields__
    assert all(parameter["description"] for parameter in parameters)
    assert [parameter["name"] for parameter in parameters if parameter["required"]] == [
        name for name in request_.__struct_fields__ if name == "family"
    ]


def test_units_and_ranges_are_described(description):
    """A field's range and unit stand in the schema."""
    altitude = description["components"]["schemas"]["CellRequest"]["properties"]["altitude_m"]

    assert (altitude["minimum"], altitude["maximum"], altitude["x-unit"]) == (0, 30000, "m")


@pytest.mark.parametrize(
    ("operation", "query", "schema"),
    [
        ("matrix", "", "MatrixResult"),
        ("cell", "family=n&band=2m", "CellResult"),
        ("catalogue", "", "CatalogueResult"),
        ("cell", "family=n&band=2m&vswr=0", "InputProblem"),
        ("nothing", "", "Problem"),
    ],
)
def test_answers_are_as_described(client, description, operation, query, schema):
    """What is answered is valid by the described schema, and nothing at all is not."""
    assert conforms(description, schema, client.get(operation, query).json())
    assert not conforms(description, schema, {})


def test_problem_types_lead_to_their_description(client, description):
    """The type of a refusal is an address inside the description."""
    address, _, pointer = client.get("cell").json()["type"].partition("#/")

    found = description
    for part in pointer.split("/"):
        found = found[part]
    assert address == "/api/v1/openapi.json"
    assert {"field", "value", "allowed"} <= found["properties"].keys()
